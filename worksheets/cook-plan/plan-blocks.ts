import { mediumField, type PlanBands, type PlanOutcome } from '@larderwright/calc/cook-plan';
import { formatLimitTemp, type QuantityKind, type Unit } from '@larderwright/calc/quantities';
import { filled, words } from '../batch-sheet/build/filled.ts';
import type { Filled } from '../batch-sheet/sheet-model.ts';
import type { CardBlock, CardBox } from '../parts/card-blocks.tsx';
import {
  CHILL_KIND_NAMES,
  LID_NAMES,
  METHOD_NAMES,
  PREDICTED_NAMES,
  VESSEL_NAMES,
} from '../words/cook-plan-names.ts';
import { SHAPE_NAMES } from '../words/mould-names.ts';
import type { CookPlanComputed } from './compute.ts';
import { bandWords, degreesText, legBandWords, riseText, timeWords } from './text.ts';

const made = (text: string | null): Filled | null => (text === null ? null : { text, flag: 'W' });

/** Blocks of the card: every input of the plan, and what it predicts with boxes for what happens. */
export function planBlocks(
  { batch, slice, ground }: CookPlanComputed,
  outcome: PlanOutcome | null,
  bands: PlanBands | null,
): CardBlock[] {
  const { mould, reading, limit, coolSet, targetC, holdMin } = ground;
  const box = (label: string, kind: QuantityKind, of: keyof typeof slice, unit: Unit): CardBox => {
    const entry = slice[of];
    const known = typeof entry === 'object' && entry !== null && 'text' in entry;
    return {
      label,
      value: known ? filled(kind, entry, kind === 'temperature' ? entry.unit : unit) : null,
      unit,
    };
  };
  const bath = slice.method === 'bath';
  const medium = mediumField(slice.method);
  const prediction = outcome?.prediction ?? null;
  return [
    {
      title: 'The plan',
      rows: [
        [
          { label: 'Product', value: words(batch.product.name), wide: true },
          { label: 'Mould', value: mould ? mould.name || SHAPE_NAMES[mould.shape] : null, wide: true },
          {
            label: 'Depth',
            value: made(ground.body ? `${ground.body.fillDepthMm.toFixed(0)} mm filled` : null),
            unit: 'mm',
          },
          { label: 'Of', value: VESSEL_NAMES[slice.vessel] },
          {
            label: 'Wall',
            value:
              filled('length', slice.wall, 'mm') ??
              made(reading.wallMm === null ? null : `${reading.wallMm} mm`),
            unit: 'mm',
          },
        ],
        [
          { label: 'Over its top', value: LID_NAMES[slice.lid] },
          {
            label: 'Water of the mix',
            value: mixText(ground.mixAssumed, ground.composition?.water, slice.water.origin),
            unit: '%',
          },
          {
            label: 'Protein',
            value: mixText(ground.mixAssumed, ground.composition?.protein, slice.protein.origin),
            unit: '%',
          },
          {
            label: 'Fat',
            value: mixText(ground.mixAssumed, ground.composition?.fat, slice.fat.origin),
            unit: '%',
          },
          box('Core goes in at', 'temperature', 'start', 'C'),
        ],
        [
          { label: 'Cooked in', value: METHOD_NAMES[slice.method], wide: true },
          box('At', 'temperature', medium, 'C'),
          ...(bath
            ? [
                { label: 'Air', value: slice.fan === 'fan' ? 'with its fan' : 'still' },
                box('Water', 'mass', 'bathWater', 'kg'),
                box('in at', 'temperature', 'bathStart', 'C'),
                { label: 'Pan', value: slice.cover },
              ]
            : []),
          box('Height over the sea', 'length', 'altitude', 'm'),
        ],
        [
          {
            label: 'Oven record',
            value: slice.ovenRecord.name.trim() === '' ? 'none: shipped figures' : slice.ovenRecord.name,
            wide: true,
          },
          { label: 'Gives heat, times', value: filled('ratio', slice.ovenRecord.films, 'ratio') },
          { label: 'Heats the pan, times', value: filled('ratio', slice.ovenRecord.heating, 'ratio') },
          {
            label: 'Hotter than shown by',
            value: filled('temperature-difference', slice.ovenRecord.shift, slice.ovenRecord.shift.unit),
          },
        ],
        ...(bath
          ? [
              [
                box('Moulds in the pan', 'count', 'mouldsInPan', 'count'),
                box('Pan long', 'length', 'panLength', 'mm'),
                box('wide', 'length', 'panWidth', 'mm'),
                box('deep', 'length', 'panHeight', 'mm'),
                box('Water stands at', 'length', 'level', 'mm'),
              ],
            ]
          : []),
        [
          {
            label: 'Core to reach',
            value:
              filled('temperature', slice.target, slice.target.unit) ??
              made(targetC === null ? null : degreesText(targetC, 'up')),
            unit: '°C',
          },
          {
            label: 'Kept in the heat',
            value: filled('time', slice.hold, 'min') ?? made(holdMin === null ? null : timeWords(holdMin)),
            unit: 'min',
          },
          {
            label: 'Limit',
            value: made(
              limit ? `${formatLimitTemp(limit.limit.stated, 'minimum').text}, ${limit.hold.printed}` : null,
            ),
            wide: true,
          },
        ],
        [
          box('Rest', 'time', 'rest', 'min'),
          box('Room', 'temperature', 'room', 'C'),
          box('Press', 'time', 'press', 'min'),
          box('in air of', 'temperature', 'pressAir', 'C'),
        ],
      ],
      table: {
        columns: ['Chill', 'At', 'For', 'Until the core reads', 'Moulds', 'Tops'],
        rows: slice.chill.map((leg) => [
          CHILL_KIND_NAMES[leg.kind],
          filled('temperature', leg.temp, leg.temp.unit),
          filled('time', leg.minutes, 'min') ?? '–',
          leg.minutes.text.trim() === '' ? filled('temperature', leg.until, leg.until.unit) : '–',
          leg.standing === 'stacked' ? 'stacked' : 'apart',
          leg.top === 'covered' ? 'covered' : 'open',
        ]),
        blankRows: slice.chill.length === 0 ? 2 : 0,
      },
    },
    {
      title: 'PREDICTED, NOT PROOF: ±20 % at best. The probe rules',
      table: {
        columns: ['What', 'Predicted', 'Band', 'Clock', 'Core read'],
        rows: [
          ['Into the heat', '0:00', '–', null, null],
          [
            'Core at its target',
            made(
              prediction === null
                ? null
                : prediction.targetMin === null
                  ? 'NEVER'
                  : timeWords(prediction.targetMin),
            ),
            made(bands ? bandWords(bands.targetMin) : null),
            null,
            null,
          ],
          [
            'Out of the heat',
            made(prediction ? timeWords(prediction.heatEndMin) : null),
            made(bands ? bandWords(bands.heatEndMin) : null),
            null,
            null,
          ],
          [
            'Peak of the core',
            made(
              prediction
                ? `${degreesText(prediction.peak.tempC, 'down')}, +${riseText(prediction.carryOverC)}`
                : null,
            ),
            made(
              bands
                ? `${degreesText(bands.peakC.low, 'down')} to ${degreesText(bands.peakC.high, 'up')}`
                : null,
            ),
            null,
            null,
          ],
          ...(coolSet?.legs ?? []).map((leg) => {
            const own = prediction?.cooling?.legs.find(({ legId }) => legId === leg.id);
            const band = bands?.legs.find(({ legId }) => legId === leg.id)?.elapsedMin;
            const name = `${leg.from === null ? 'End of cooking' : formatLimitTemp(leg.from, 'maximum').celsius} to ${formatLimitTemp(leg.to, 'maximum').text}, most ${timeWords(leg.maxMin)}`;
            return [
              name,
              made(
                own == null
                  ? null
                  : own.elapsedMin === null
                    ? PREDICTED_NAMES[own.state]
                    : `${timeWords(own.elapsedMin)}, ${PREDICTED_NAMES[own.state]}`,
              ),
              made(band ? legBandWords(band) : null),
              null,
              null,
            ];
          }),
          [
            'End of the chill',
            made(
              prediction ? `${timeWords(prediction.endMin)}, ${degreesText(prediction.endC, 'up')}` : null,
            ),
            '–',
            null,
            null,
          ],
        ],
      },
    },
  ];
}

function mixText(
  assumed: boolean,
  fraction: number | undefined,
  origin: 'entered' | 'default',
): Filled | null {
  if (fraction === undefined) return null;
  const text = `${(100 * fraction).toFixed(1)} %`;
  return { text, flag: assumed ? (origin === 'entered' ? 'E' : 'D') : 'W' };
}

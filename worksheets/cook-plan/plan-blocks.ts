import { plannedAltitude } from '@larderwright/calc/batch';
import {
  type CookPlanSlice,
  coldestSpot,
  mediumField,
  type PlanBands,
  type PlanOutcome,
} from '@larderwright/calc/cook-plan';
import { fixedText, type QuantityKind, type Unit } from '@larderwright/calc/quantities';
import { filled, heightOf, words } from '../batch-sheet/build/filled.ts';
import type { Filled } from '../batch-sheet/sheet-model.ts';
import type { CardBlock, CardBox } from '../parts/card-blocks.tsx';
import {
  CHILL_KIND_NAMES,
  LID_NAMES,
  METHOD_NAMES,
  PREDICTED_NAMES,
  VESSEL_NAMES,
} from '../words/cook-plan-names.ts';
import { limitTemp } from '../words/limit-temp.ts';
import { SHAPE_NAMES } from '../words/mould-names.ts';
import type { CookPlanComputed } from './compute.ts';
import { bandWords, degreesText, legBandWords, timeWords } from './text.ts';

const made = (text: string | null): Filled | null => (text === null ? null : { text, flag: 'W' });

/** Blocks of the card: every input of the plan, and what it predicts with boxes for what happens. */
export function planBlocks(
  { batch, slice, ground }: CookPlanComputed,
  levelMm: number | null,
  outcome: PlanOutcome | null,
  bands: PlanBands | null,
): CardBlock[] {
  const { mould, reading, limit, coolSet, targetC, holdMin } = ground;
  const altitude = plannedAltitude(batch) ?? slice.altitude;
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
          { label: 'Product', value: words(batch.product.name), broad: true },
          { label: 'Mould', value: mould ? mould.name || SHAPE_NAMES[mould.shape] : null, wide: true },
          {
            label: 'Filled deep',
            value: made(ground.body ? `${ground.body.fillDepthMm.toFixed(0)} mm` : null),
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
          { label: 'Over its top', value: LID_NAMES[slice.lid] },
        ],
        [
          {
            label: 'Mix: water',
            value: mixText(ground.mixAssumed, ground.composition?.water, slice.water.origin),
            unit: '%',
          },
          {
            label: 'protein',
            value: mixText(ground.mixAssumed, ground.composition?.protein, slice.protein.origin),
            unit: '%',
          },
          {
            label: 'fat',
            value: mixText(ground.mixAssumed, ground.composition?.fat, slice.fat.origin),
            unit: '%',
          },
          box('Goes in at', 'temperature', 'start', 'C'),
          {
            label: 'Core to reach',
            value:
              filled('temperature', slice.target, slice.target.unit) ??
              made(targetC === null ? null : degreesText(targetC, 'up')),
            unit: '°C',
          },
          {
            label: 'Kept in heat',
            value: filled('time', slice.hold, 'min') ?? made(holdMin === null ? null : timeWords(holdMin)),
            unit: 'min',
          },
        ],
        [
          { label: 'Cooked in', value: METHOD_NAMES[slice.method], wide: true },
          box('At', 'temperature', medium, 'C'),
          { label: 'Air', value: slice.fan === 'fan' ? 'with its fan' : 'still' },
          ...(bath
            ? [
                box('Water', 'mass', 'bathWater', 'kg'),
                box('in at', 'temperature', 'bathStart', 'C'),
                { label: 'Pan', value: slice.cover },
              ]
            : []),
          { label: 'Height', value: heightOf(altitude), unit: 'm' },
        ],
        [
          ...(bath
            ? [
                box('Moulds in it', 'count', 'mouldsInPan', 'count'),
                { label: 'Pan: long, wide, deep', value: panText(slice), wide: true },
              ]
            : []),
          ...(bath || slice.method === 'poach'
            ? [
                {
                  label: 'Water up to',
                  value: filled('length', slice.level, 'mm') ?? made(levelText(levelMm)),
                  unit: 'mm',
                },
              ]
            : []),
          box('Rest', 'time', 'rest', 'min'),
          box('Room', 'temperature', 'room', 'C'),
          box('Press', 'time', 'press', 'min'),
          box('in air of', 'temperature', 'pressAir', 'C'),
        ],
        [
          {
            label: 'Oven record',
            value: slice.ovenRecord.name.trim() === '' ? 'none, as shipped' : slice.ovenRecord.name,
            wide: true,
          },
          { label: 'Gives heat ×', value: filled('ratio', slice.ovenRecord.films, 'ratio', false) },
          { label: 'Heats pan ×', value: filled('ratio', slice.ovenRecord.heating, 'ratio', false) },
          {
            label: 'Hotter by',
            value: filled('temperature-difference', slice.ovenRecord.shift, slice.ovenRecord.shift.unit),
          },
          {
            label: 'Limit',
            value: made(
              limit ? `${limitTemp(limit.limit.stated, 'minimum').text}, ${limit.hold.printed}` : null,
            ),
            wide: true,
          },
          { label: 'Coldest spot, over the base', value: made(coldestText(outcome)), wide: true },
        ],
      ],
      table: {
        columns: ['Chill', 'At', 'For', 'Until core reads', 'Moulds', 'Tops'],
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
        kind: 'times',
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
                ? `${degreesText(prediction.peak.tempC, 'down')}, +${fixedText(prediction.carryOverC, 1)} °C`
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
            const name = `${leg.from === null ? 'End of cooking' : limitTemp(leg.from, 'maximum').celsius} to ${limitTemp(leg.to, 'maximum').text}, most ${timeWords(leg.maxMin)}`;
            return [
              name,
              made(
                own == null
                  ? null
                  : own.elapsedMin === null
                    ? PREDICTED_NAMES[own.state]
                    : `${timeWords(own.elapsedMin)}, ${PREDICTED_NAMES[own.state]}`,
              ),
              made(band ? legBandWords(band, 'some far past the limit') : null),
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

const levelText = (levelMm: number | null) => (levelMm === null ? null : `${levelMm.toFixed(0)} mm`);

/** The pan as three lengths, each with its own flag. */
function panText({ panLength, panWidth, panHeight }: CookPlanSlice): string | null {
  const sides = [panLength, panWidth, panHeight].map((side) => filled('length', side, 'mm', false));
  if (sides.every((side) => side === null)) return null;
  return `${sides.map((side) => (side === null ? '___' : `${side.text} ${side.flag}`)).join(' × ')} mm`;
}

function coldestText(outcome: PlanOutcome | null): string | null {
  const spot = outcome && coldestSpot(outcome, outcome.prediction.heatEndMin);
  return spot ? `${fixedText(spot.heightMm, 0)} mm, middle` : null;
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

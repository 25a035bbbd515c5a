import { plannedAltitude } from '@larderwright/calc/batch';
import {
  type CookPlanSlice,
  coldestSpot,
  mediumField,
  type PlanBands,
  type PlanOutcome,
} from '@larderwright/calc/cook-plan';
import { fixedText, type QuantityKind, type Unit } from '@larderwright/calc/quantities';
import * as say from '#words/cook-plan/plan-blocks.ts';
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
      title: say.thePlan,
      rows: [
        [
          { label: say.product, value: words(batch.product.name), broad: true },
          { label: say.mould, value: mould ? mould.name || SHAPE_NAMES[mould.shape] : null, wide: true },
          {
            label: say.filledDeep,
            value: made(ground.body ? `${ground.body.fillDepthMm.toFixed(0)} mm` : null),
            unit: 'mm',
          },
          { label: say.ofWord, value: VESSEL_NAMES[slice.vessel] },
          {
            label: say.wall,
            value:
              filled('length', slice.wall, 'mm') ??
              made(reading.wallMm === null ? null : `${reading.wallMm} mm`),
            unit: 'mm',
          },
          { label: say.overItsTop, value: LID_NAMES[slice.lid] },
        ],
        [
          {
            label: say.mixWater,
            value: mixText(ground.mixAssumed, ground.composition?.water, slice.water.origin),
            unit: '%',
          },
          {
            label: say.protein,
            value: mixText(ground.mixAssumed, ground.composition?.protein, slice.protein.origin),
            unit: '%',
          },
          {
            label: say.fat,
            value: mixText(ground.mixAssumed, ground.composition?.fat, slice.fat.origin),
            unit: '%',
          },
          box(say.goesInAt, 'temperature', 'start', 'C'),
          {
            label: say.coreToReach,
            value:
              filled('temperature', slice.target, slice.target.unit) ??
              made(targetC === null ? null : degreesText(targetC, 'up')),
            unit: '°C',
          },
          {
            label: say.keptInHeat,
            value: filled('time', slice.hold, 'min') ?? made(holdMin === null ? null : timeWords(holdMin)),
            unit: 'min',
          },
        ],
        [
          { label: say.cookedIn, value: METHOD_NAMES[slice.method], wide: true },
          box(say.at, 'temperature', medium, 'C'),
          { label: say.air, value: slice.fan === 'fan' ? say.withItsFan : 'still' },
          ...(bath
            ? [
                box(say.water, 'mass', 'bathWater', 'kg'),
                box(say.inAt, 'temperature', 'bathStart', 'C'),
                { label: say.pan, value: slice.cover },
              ]
            : []),
          { label: say.height, value: heightOf(altitude), unit: 'm' },
        ],
        [
          ...(bath
            ? [
                box(say.mouldsInIt, 'count', 'mouldsInPan', 'count'),
                { label: say.panLongWideDeep, value: panText(slice), wide: true },
              ]
            : []),
          ...(bath || slice.method === 'poach'
            ? [
                {
                  label: say.waterUpTo,
                  value: filled('length', slice.level, 'mm') ?? made(levelText(levelMm)),
                  unit: 'mm',
                },
              ]
            : []),
          box(say.rest, 'time', 'rest', 'min'),
          box(say.room, 'temperature', 'room', 'C'),
          box(say.press, 'time', 'press', 'min'),
          box(say.inAirOf, 'temperature', 'pressAir', 'C'),
        ],
        [
          {
            label: say.ovenRecord,
            value: slice.ovenRecord.name.trim() === '' ? say.noneAsShipped : slice.ovenRecord.name,
            wide: true,
          },
          { label: say.givesHeat, value: filled('ratio', slice.ovenRecord.films, 'ratio', false) },
          { label: say.heatsPan, value: filled('ratio', slice.ovenRecord.heating, 'ratio', false) },
          {
            label: say.hotterBy,
            value: filled('temperature-difference', slice.ovenRecord.shift, slice.ovenRecord.shift.unit),
          },
          {
            label: say.limit,
            value: made(
              limit ? `${limitTemp(limit.limit.stated, 'minimum').text}, ${limit.hold.printed}` : null,
            ),
            wide: true,
          },
          { label: say.coldestSpotOverTheBase, value: made(coldestText(outcome)), wide: true },
        ],
      ],
      table: {
        columns: [say.chill, say.at, say.forWord, say.untilCoreReads, say.moulds, say.tops],
        rows: slice.chill.map((leg) => [
          CHILL_KIND_NAMES[leg.kind],
          filled('temperature', leg.temp, leg.temp.unit),
          filled('time', leg.minutes, 'min') ?? '–',
          leg.minutes.text.trim() === '' ? filled('temperature', leg.until, leg.until.unit) : '–',
          leg.standing === 'stacked' ? say.stacked : say.apart,
          leg.top === 'covered' ? say.covered : say.open,
        ]),
        blankRows: slice.chill.length === 0 ? 2 : 0,
      },
    },
    {
      title: say.predictedNotProof20BestProbe,
      table: {
        kind: 'times',
        columns: [say.what, say.predicted, say.band, say.clock, say.coreRead],
        rows: [
          [say.intoTheHeat, '0:00', '–', null, null],
          [
            say.coreAtItsTarget,
            made(
              prediction === null
                ? null
                : prediction.targetMin === null
                  ? say.never
                  : timeWords(prediction.targetMin),
            ),
            made(bands ? bandWords(bands.targetMin) : null),
            null,
            null,
          ],
          [
            say.outOfTheHeat,
            made(prediction ? timeWords(prediction.heatEndMin) : null),
            made(bands ? bandWords(bands.heatEndMin) : null),
            null,
            null,
          ],
          [
            say.peakOfTheCore,
            made(
              prediction
                ? `${degreesText(prediction.peak.tempC, 'down')}, +${fixedText(prediction.carryOverC, 1)} °C`
                : null,
            ),
            made(
              bands
                ? say.to2(degreesText(bands.peakC.low, 'down'), degreesText(bands.peakC.high, 'up'))
                : null,
            ),
            null,
            null,
          ],
          ...(coolSet?.legs ?? []).map((leg) => {
            const own = prediction?.cooling?.legs.find(({ legId }) => legId === leg.id);
            const band = bands?.legs.find(({ legId }) => legId === leg.id)?.elapsedMin;
            const name = say.toMost2(
              leg.from === null ? say.endOfCooking : limitTemp(leg.from, 'maximum').celsius,
              limitTemp(leg.to, 'maximum').text,
              timeWords(leg.maxMin),
            );
            return [
              name,
              made(
                own == null
                  ? null
                  : own.elapsedMin === null
                    ? PREDICTED_NAMES[own.state]
                    : `${timeWords(own.elapsedMin)}, ${PREDICTED_NAMES[own.state]}`,
              ),
              made(band ? legBandWords(band, say.someFarPastTheLimit) : null),
              null,
              null,
            ];
          }),
          [
            say.endOfTheChill,
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
  return spot ? say.mmMiddle2(fixedText(spot.heightMm, 0)) : null;
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

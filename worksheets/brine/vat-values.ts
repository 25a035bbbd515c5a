import type { Batch } from '@larderwright/calc/batch';
import type { BrineSlice, BrineValues } from '@larderwright/calc/brine';
import type { Verdict } from '@larderwright/calc/findings';
import { type Entry, fixedText, type QuantityKind } from '@larderwright/calc/quantities';
import * as say from '#words/brine/vat-values.ts';
import { filled, percent, words } from '../batch-sheet/build/filled.ts';
import { sheetVerdicts } from '../batch-sheet/build/verdicts.ts';
import type { Filled, SheetVerdict } from '../batch-sheet/sheet-model.ts';
import { plannedGrams } from '../whole-muscle/planned.ts';
import { timeLines } from '../whole-muscle/time-lines.ts';
import { BRINE_METHODS, FEDERAL_METHODS, SALT_BASES } from '../words/brine-names.ts';
import { FINISH_NAMES, PRODUCT_NAMES } from '../words/whole-muscle-names.ts';

/** One part of the brine: what to weigh, what the scale showed. */
export interface PartValues {
  readonly plan: Filled | null;
  readonly actual: Filled | null;
}

/** What a card for one vat says. Null prints an empty box. */
export interface VatValues {
  readonly product: string | null;
  readonly finish: string | null;
  readonly traditional: string | null;
  readonly method: string | null;
  readonly counting: string | null;
  /** Every number field of the vat, by its key in the slice. */
  readonly fields: Readonly<Partial<Record<VatField, Filled | null>>>;
  readonly saltBase: string;
  readonly acceleratorForm: string | null;
  readonly pack: string | null;
  readonly lot: string | null;
  readonly nitrite: Filled | null;
  readonly nitrate: Filled | null;
  readonly scaleStep: Filled | null;
  readonly weighedBy: string | null;
  readonly checkedBy: string | null;
  readonly parts: Readonly<Record<keyof BrineSlice['actual'], PartValues>>;
  readonly strength: string | null;
  readonly nitriteLines: readonly string[];
  readonly saltLine: string | null;
  readonly verdicts: readonly SheetVerdict[];
  readonly inject: Filled | null;
  readonly injectTo: Filled | null;
  readonly expected: Filled | null;
  readonly guidance: string | null;
  /** What each rule of curing time says, and diffusion. */
  readonly times: readonly string[];
  readonly mixedOn: string | null;
  readonly startedOn: string | null;
  readonly readyFrom: string | null;
  readonly turnOn: readonly string[];
  readonly use: string | null;
}

const FIELD_KINDS = {
  skinOff: 'mass',
  skinOn: 'mass',
  heaviest: 'mass',
  thickness: 'length',
  meatWater: 'fraction',
  water: 'mass',
  saltTarget: 'fraction',
  strength: 'fraction',
  sugar: 'fraction',
  nitriteTarget: 'ppm',
  acceleratorTarget: 'ppm',
  phosphate: 'fraction',
  injection: 'fraction',
  retained: 'fraction',
  pickUp: 'fraction',
  afterInjection: 'mass',
  afterBrine: 'mass',
  brineTemp: 'temperature',
  days: 'time',
} as const satisfies Partial<Record<keyof BrineSlice, QuantityKind>>;

export type VatField = keyof typeof FIELD_KINDS;

const typed = (kind: QuantityKind, entry: Entry) => filled(kind, entry, entry.unit);
const ppmText = (ppm: number | null) => (ppm === null ? say.cannotTell : `${fixedText(ppm, 1, 'up')} mg/kg`);

/** Sets one vat in words and figures. */
export function vatValues(
  batch: Batch,
  slice: BrineSlice,
  values: BrineValues,
  verdicts: readonly Verdict[],
): VatValues {
  const { cure } = batch;
  const { recipe, time, strength, brineSaltFraction } = values;
  const keys = Object.keys(FIELD_KINDS) as VatField[];
  const part = (key: keyof BrineSlice['actual'], planG: number | null | undefined): PartValues => ({
    plan: plannedGrams(planG),
    actual: typed('mass', slice.actual[key]),
  });
  return {
    product: slice.product && PRODUCT_NAMES[slice.product],
    finish: slice.finish && FINISH_NAMES[slice.finish],
    traditional: slice.isTraditional ? say.yes : say.no,
    method: slice.method && BRINE_METHODS[slice.method],
    counting: slice.federalMethod && FEDERAL_METHODS[slice.federalMethod],
    fields: Object.fromEntries(keys.map((key) => [key, typed(FIELD_KINDS[key], slice[key])])),
    saltBase: SALT_BASES[slice.saltBase],
    acceleratorForm:
      slice.acceleratorForm === null
        ? null
        : slice.acceleratorForm === 'acid'
          ? say.theAcid
          : say.theSodiumSalt,
    pack: words(slice.pack.name),
    lot: words(slice.pack.lot),
    nitrite: typed('fraction', slice.pack.strength.nitrite),
    nitrate: typed('fraction', slice.pack.strength.nitrate),
    scaleStep: typed('mass', cure.scaleReadability),
    weighedBy: words(cure.weighedBy),
    checkedBy: words(cure.checkedBy),
    parts: {
      water: part('water', recipe?.waterG),
      salt: part('salt', recipe?.plainSaltG),
      curingSalt: part('curingSalt', recipe?.curingSaltG),
      sugar: part('sugar', recipe?.sugarG),
      accelerator: part('accelerator', recipe?.acceleratorG),
      phosphate: part('phosphate', recipe?.phosphateG),
    },
    strength:
      strength === null || brineSaltFraction === null
        ? null
        : say.saltSalometer(percent(brineSaltFraction), fixedText(strength.salometer, 1)) +
          say.beSpecificGravity(fixedText(strength.baume, 1), fixedText(strength['specific-gravity'], 4)) +
          say.gToALitreOfBrine(fixedText(strength['g-per-litre-brine'], 1)) +
          say.gToAKgOfWater(fixedText(strength['g-per-kg-water'], 1)) +
          say.lbToAUsGallonOf(fixedText(strength['lb-per-gallon-brine'], 3)) +
          say.lbToOneOfWaterAt(fixedText(strength['lb-per-gallon-water'], 3)),
    nitriteLines: nitriteLines(values),
    saltLine:
      values.salt === null
        ? null
        : say.whenEvenSaltMeatWater(
            percent(values.salt.saltOnMeatFraction),
            percent(values.salt.waterPhaseFraction),
            activityText(values),
          ),
    verdicts: sheetVerdicts(verdicts),
    inject: plannedGrams(values.injectG),
    injectTo: plannedGrams(values.targetMassG),
    expected: plannedGrams(values.expectedMassG),
    // The rules are for a soak: with needles they would say months.
    guidance:
      time.guidanceDays === null || slice.method === 'inject' || slice.method === 'inject-cover'
        ? null
        : say.to(time.guidanceDays.low, time.guidanceDays.high),
    times: slice.method === 'inject' || slice.method === 'inject-cover' ? [] : timeLines(time),
    mixedOn: words(slice.mixedOn),
    startedOn: words(slice.startedOn),
    readyFrom: values.readyFrom,
    turnOn: values.turnOn,
    use: slice.use,
  };
}

/** Estimated from salt alone: a range, never one figure. */
function activityText({ waterActivity }: BrineValues): string {
  return waterActivity === null
    ? ''
    : say.waterActivityEstimatedTo(fixedText(waterActivity.low, 3), fixedText(waterActivity.high, 3, 'up'));
}

function nitriteLines(values: BrineValues): string[] {
  const { immersion, pumpedPpm, nitritePpmAll } = values;
  const lines: string[] = [];
  if (pumpedPpm !== null) lines.push(say.nitriteByThePumpOfThe(ppmText(pumpedPpm)));
  if (immersion !== null) {
    const { pickUpPpm, equilibriumPpm, worstPpm } = immersion;
    lines.push(
      say.nitriteByPickUpAtEquilibrium(ppmText(pickUpPpm), ppmText(equilibriumPpm)) +
        say.ifAllOfItWentIn(ppmText(worstPpm)),
    );
  }
  if (nitritePpmAll !== null) lines.push(say.onEverythingInTheVat(ppmText(nitritePpmAll)));
  return lines;
}

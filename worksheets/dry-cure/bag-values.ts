import type { Batch } from '@larderwright/calc/batch';
import type { DryCurePiece, DryCureSlice, PieceValues } from '@larderwright/calc/dry-cure';
import type { Verdict } from '@larderwright/calc/findings';
import { type Entry, fixedText, type QuantityKind, type Unit } from '@larderwright/calc/quantities';
import * as say from '#words/dry-cure/bag-values.ts';
import { filled, percent, words } from '../batch-sheet/build/filled.ts';
import { sheetVerdicts } from '../batch-sheet/build/verdicts.ts';
import type { Filled, SheetVerdict } from '../batch-sheet/sheet-model.ts';
import { plannedGrams } from '../whole-muscle/planned.ts';
import { timeLines } from '../whole-muscle/time-lines.ts';
import { DRY_CURE_METHODS } from '../words/dry-cure-names.ts';
import { FINISH_NAMES, PRODUCT_NAMES } from '../words/whole-muscle-names.ts';

/** What a card for one bag says. Null prints an empty box. */
export interface BagValues {
  readonly piece: string | null;
  readonly product: string | null;
  readonly finish: string | null;
  readonly traditional: string | null;
  readonly method: string | null;
  readonly skinOff: Filled | null;
  readonly skinOn: Filled | null;
  readonly thickness: Filled | null;
  readonly chill: Filled | null;
  readonly startedOn: string | null;
  readonly pack: string | null;
  readonly lot: string | null;
  readonly nitrite: Filled | null;
  readonly nitrate: Filled | null;
  readonly nitriteTarget: Filled | null;
  readonly scaleStep: Filled | null;
  readonly cure: Filled | null;
  readonly cureActual: Filled | null;
  readonly weighedBy: string | null;
  readonly checkedBy: string | null;
  readonly ppm: string | null;
  readonly verdicts: readonly SheetVerdict[];
  readonly saltTarget: Filled | null;
  readonly salt: Filled | null;
  readonly saltActual: Filled | null;
  readonly sugarTarget: Filled | null;
  readonly sugar: Filled | null;
  readonly sugarActual: Filled | null;
  readonly saltInMeat: string | null;
  readonly times: readonly string[];
  readonly days: string | null;
  readonly readyFrom: string | null;
  readonly readyBy: string | null;
  readonly turnOn: readonly string[];
  readonly lossTarget: Filled | null;
  readonly targetMass: Filled | null;
  readonly now: Filled | null;
  readonly lost: string | null;
}

/** A number as the sheet prints it, in its own unit. */
const typed = (kind: QuantityKind, entry: Entry, unit: Unit = entry.unit) => filled(kind, entry, unit);

/** Sets one bag in words and figures. */
export function bagValues(of: {
  readonly batch: Batch;
  readonly slice: DryCureSlice;
  readonly piece: DryCurePiece;
  readonly of: PieceValues | undefined;
  readonly verdicts: readonly Verdict[];
}): BagValues {
  const { batch, slice, piece, of: values, verdicts } = of;
  const { cure } = batch;
  const plan = values?.plan ?? null;
  const ppm = (value: number | null | undefined) =>
    value === null || value === undefined ? say.cannotTell : fixedText(value, 1, 'up');
  const days = values?.time.guidanceDays ?? null;
  return {
    piece: words(piece.name),
    product: slice.product && PRODUCT_NAMES[slice.product],
    finish: slice.finish && FINISH_NAMES[slice.finish],
    traditional: slice.isTraditional ? say.yes : say.no,
    method: DRY_CURE_METHODS[slice.method],
    skinOff: typed('mass', piece.skinOff),
    skinOn: typed('mass', piece.skinOn),
    thickness: typed('length', piece.thickness),
    chill: typed('temperature', slice.chillTemp),
    startedOn: words(slice.startedOn),
    pack: words(slice.pack.name),
    lot: words(slice.pack.lot),
    nitrite: typed('fraction', slice.pack.strength.nitrite),
    nitrate: typed('fraction', slice.pack.strength.nitrate),
    nitriteTarget: typed('ppm', slice.nitriteTarget),
    scaleStep: typed('mass', cure.scaleReadability),
    cure: plannedGrams(plan?.curingSaltG),
    cureActual: typed('mass', piece.curingSaltActual),
    weighedBy: words(cure.weighedBy),
    checkedBy: words(cure.checkedBy),
    ppm:
      slice.method === 'equilibrium'
        ? say.mgKgOnTheMeat(
            values?.inUse.isCureWeighed ? say.asWeighed : say.asPlanned,
            ppm(values?.nitritePpmMeat),
          ) + say.meatCureSodiumNitriteMeatCure(ppm(values?.nitritePpmTotal), ppm(values?.nitriteIonPpmTotal))
        : say.uptakeNotControlledNoMgKg,
    verdicts: sheetVerdicts(verdicts),
    saltTarget: typed('fraction', slice.saltTarget),
    salt: plannedGrams(plan?.plainSaltG),
    saltActual: typed('mass', piece.saltActual),
    sugarTarget: typed('fraction', slice.sugar),
    sugar: plannedGrams(plan?.sugarG),
    sugarActual: typed('mass', piece.sugarActual),
    saltInMeat: percent(values?.saltFraction ?? null),
    times: values ? timeLines(values.time) : [],
    days: days === null ? null : say.to(days.low, days.high),
    readyFrom: values?.readyFrom ?? null,
    readyBy: values?.readyBy ?? null,
    turnOn: values?.turnOn ?? [],
    lossTarget: typed('fraction', slice.lossTarget),
    targetMass: plannedGrams(values?.targetMassG),
    now: typed('mass', piece.now),
    lost: percent(values?.lossFraction ?? null, 1),
  };
}

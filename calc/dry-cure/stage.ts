import {
  type CureSlice,
  type MeasuredResidual,
  nitriteIonFromSodiumNitrite,
  nitritePpm,
  readResidual,
  type Span,
  weighingErrorFraction,
} from '../cure/index.ts';
import type { MissingInput, StageResult, Verdict } from '../findings/index.ts';
import { entryValue } from '../quantities/index.ts';
import { massAfterLoss, saltAfterLoss } from './after-loss.ts';
import { cureTime } from './cure-time.ts';
import type { DryCureFindingId } from './finding-ids.ts';
import { type DryCureState, dryCureFindings } from './findings.ts';
import { judgeMuscle, nitrateVerdict, nitriteVerdicts } from './judge.ts';
import { type PackReading, readPack } from './pack.ts';
import { ceilingOnMeat, type PiecePlan, planPiece } from './piece-plan.ts';
import {
  type WholeMuscleKind,
  type WholeMuscleRuleSet,
  wholeMuscleLimits,
  wholeMuscleRuleSet,
} from './rule-sets/index.ts';
import { skinFreeMass } from './skin.ts';
import type { DryCurePiece, DryCureSlice } from './slice.ts';
import { dateAfter, turnDates } from './turn-dates.ts';
import type { DryCureValues, PieceValues } from './values.ts';
import { wholeMuscleAmounts } from './whole-muscle-amounts.ts';

/** What every piece is worked out from. */
interface Recipe {
  readonly slice: DryCureSlice;
  readonly kind: WholeMuscleKind;
  readonly ruleSet: WholeMuscleRuleSet | null;
  readonly pack: PackReading;
  readonly readabilityG: number | null;
  readonly saltFraction: number | null;
  readonly sugarFraction: number | null;
  readonly nitriteTargetPpm: number | null;
  readonly lossFraction: number | null;
  readonly ceilingPpmMeat: number | null;
  readonly measured: MeasuredResidual | null;
}

/**
 * Dry cure of whole muscle, piece by piece. In a bag at equilibrium all of the weighed cure counts
 * as taken up; in a salt box or a rub uptake is not controlled and no concentration is ever given.
 *
 * @param slices the dry cure, and the cure's rule set, scale and two people
 */
export function dryCureStage(slices: {
  readonly cure: CureSlice;
  readonly dryCure: DryCureSlice;
}): StageResult<DryCureValues, DryCureFindingId> {
  const { cure, dryCure: slice } = slices;
  const recipe = readRecipe(slice, cure);
  const { kind, pack, ruleSet } = recipe;
  const verdicts: Verdict<DryCureFindingId>[] = [];
  const usesCure = curingSaltIsUsed(slice, recipe.nitriteTargetPpm);
  const pieces = slice.pieces.map((piece, index) => {
    const values = pieceValues(piece, recipe);
    const of = { subject: 'dry-cure', ruleSetId: cure.ruleSetId, kind, subjectId: piece.id } as const;
    const amounts = wholeMuscleAmounts(massesOf(values, usesCure), pack);
    const isControlled = slice.method === 'equilibrium' || !usesCure;
    const whose = slice.pieces.length === 1 ? {} : { piece: piece.name.trim(), pieceNo: index + 1 };
    const judged = [...nitriteVerdicts(of, isControlled ? values : null), nitrateVerdict(of, amounts)];
    verdicts.push(...judged.map((one) => ({ ...one, params: { ...one.params, ...whose } })));
    return values;
  });
  const chillC = entryValue('temperature', slice.chillTemp);
  const values: DryCureValues = { ruleSet, pack, pieces, chillC, ceilingPpmMeat: recipe.ceilingPpmMeat };
  const state: DryCureState = {
    slice,
    cure,
    kind,
    values,
    readabilityG: recipe.readabilityG,
    usesCure,
    saltTargetFraction: recipe.saltFraction,
    lossTargetFraction: recipe.lossFraction,
  };
  return { values, findings: dryCureFindings(state), verdicts, missing: missingInputs(state) };
}

function readRecipe(slice: DryCureSlice, cure: CureSlice): Recipe {
  const { product, finish, isTraditional } = slice;
  const kind: WholeMuscleKind = { product, finish, isTraditional, route: 'dry' };
  const ruleSet = wholeMuscleRuleSet(cure.ruleSetId);
  const saltFraction = entryValue('fraction', slice.saltTarget);
  const sugarFraction = entryValue('fraction', slice.sugar);
  const readability = entryValue('mass', cure.scaleReadability);
  const limits = ruleSet === null || product === null ? [] : wholeMuscleLimits(ruleSet, kind);
  return {
    slice,
    kind,
    ruleSet,
    pack: readPack(slice.pack),
    readabilityG: readability !== null && readability > 0 ? readability : null,
    saltFraction,
    sugarFraction,
    nitriteTargetPpm: entryValue('ppm', slice.nitriteTarget),
    lossFraction: entryValue('fraction', slice.lossTarget),
    ceilingPpmMeat: ceilingOnMeat(limits, (saltFraction ?? 0) + (sugarFraction ?? 0)),
    measured: readResidual(cure.residual),
  };
}

/** A target, a strength or a weighed amount: somebody means to use curing salt. A blank target is not "none". */
function curingSaltIsUsed(slice: DryCureSlice, targetPpm: number | null): boolean {
  const isWeighed = slice.pieces.some((piece) => {
    const grams = entryValue('mass', piece.curingSaltActual);
    return grams === null ? piece.curingSaltActual.text.trim() !== '' : grams > 0;
  });
  return isWeighed || targetPpm !== 0;
}

function pieceValues(piece: DryCurePiece, recipe: Recipe): PieceValues {
  const { slice, pack, readabilityG, kind, ruleSet } = recipe;
  const green = skinFreeMass(entryValue('mass', piece.skinOff), entryValue('mass', piece.skinOn));
  const greenG = green?.massG ?? null;
  const isControlled = slice.method === 'equilibrium';
  const plan =
    greenG === null || !isControlled || recipe.ceilingPpmMeat === null
      ? planWithoutCure(recipe, greenG, isControlled)
      : planPiece({ ...questionOf(recipe), greenG });
  const inUse = amountsInUse(piece, plan);
  const shown = isControlled ? concentrations(greenG, inUse, pack) : NOTHING_KNOWN;
  const thicknessMm = entryValue('length', piece.thickness);
  const time = cureTime({ thicknessMm, massG: greenG, route: 'dry', isHam: kind.product === 'ham' });
  const { guidanceDays } = time;
  const base = {
    id: piece.id,
    name: piece.name,
    greenG,
    isSkinEstimated: green?.isEstimated ?? false,
    thicknessMm,
    plan,
    inUse,
    ...shown,
    weighingErrorFraction:
      inUse.curingSaltG === null || readabilityG === null
        ? null
        : weighingErrorFraction(inUse.curingSaltG, readabilityG),
    time,
    turnOn: guidanceDays === null ? [] : turnDates(slice.startedOn, guidanceDays.low),
    readyFrom: guidanceDays === null ? null : dateAfter(slice.startedOn, guidanceDays.low),
    readyBy: guidanceDays === null ? null : dateAfter(slice.startedOn, guidanceDays.high),
    ...lossOf(piece, greenG, shown.saltFraction, recipe.lossFraction),
  };
  const isNone = recipe.nitriteTargetPpm === 0 && (inUse.curingSaltG ?? 0) === 0;
  const judged =
    isControlled || isNone
      ? judgeMuscle(ruleSet, kind, wholeMuscleAmounts(massesOf(base, !isNone), pack), recipe.measured)
      : { ceilings: [], floors: [] };
  return { ...base, ...judged };
}

function questionOf(recipe: Recipe) {
  return {
    saltTargetFraction: recipe.saltFraction,
    sugarFraction: recipe.sugarFraction,
    nitriteTargetPpm: recipe.nitriteTargetPpm,
    nitriteFraction: recipe.pack.nitriteFraction,
    packSaltFraction: recipe.pack.saltFraction,
    readabilityG: recipe.readabilityG,
    ceilingPpmMeat: recipe.ceilingPpmMeat,
  };
}

/** Without a limit to stay under no curing salt is dosed; plain salt and sugar can be, where none goes in. */
function planWithoutCure(recipe: Recipe, greenG: number | null, isControlled: boolean): PiecePlan | null {
  if (!isControlled || greenG === null) return null;
  const wantsCure = recipe.nitriteTargetPpm !== 0;
  return planPiece({ ...questionOf(recipe), greenG, nitriteTargetPpm: wantsCure ? null : 0 });
}

function amountsInUse(piece: DryCurePiece, plan: PiecePlan | null): PieceValues['inUse'] {
  const curingSaltG = entryValue('mass', piece.curingSaltActual);
  const saltG = entryValue('mass', piece.saltActual);
  const sugarG = entryValue('mass', piece.sugarActual);
  // A weight that was typed and cannot be read is unknown; the plan does not stand in for it.
  const planned = <T>(entry: { text: string }, value: T) => (entry.text.trim() === '' ? value : null);
  return {
    plainSaltG: saltG ?? planned(piece.saltActual, plan?.plainSaltG ?? null),
    curingSaltG: curingSaltG ?? planned(piece.curingSaltActual, plan?.curingSaltG ?? null),
    sugarG: sugarG ?? planned(piece.sugarActual, plan?.sugarG ?? null),
    isCureWeighed: curingSaltG !== null,
  };
}

const NOTHING_KNOWN = {
  saltFraction: null,
  nitritePpmMeat: null,
  nitritePpmTotal: null,
  nitriteIonPpmTotal: null,
};

function concentrations(greenG: number | null, inUse: PieceValues['inUse'], pack: PackReading) {
  const { plainSaltG, curingSaltG } = inUse;
  const totalG = totalOf(greenG, inUse);
  const nitriteG =
    curingSaltG === 0
      ? 0
      : curingSaltG === null || pack.nitriteFraction === null
        ? null
        : curingSaltG * pack.nitriteFraction;
  const cureSaltG =
    curingSaltG === 0
      ? 0
      : curingSaltG === null || pack.saltFraction === null
        ? null
        : curingSaltG * pack.saltFraction;
  const onTotal = nitriteG === null || totalG === null ? null : nitritePpm(nitriteG, totalG);
  return {
    saltFraction:
      greenG === null || plainSaltG === null || cureSaltG === null ? null : (plainSaltG + cureSaltG) / greenG,
    nitritePpmMeat: nitriteG === null || greenG === null ? null : nitritePpm(nitriteG, greenG),
    nitritePpmTotal: onTotal,
    nitriteIonPpmTotal: onTotal === null ? null : nitriteIonFromSodiumNitrite(onTotal),
  };
}

/** Meat with its cure. What is not known is left out, which makes a concentration higher, never lower. */
function totalOf(greenG: number | null, inUse: PieceValues['inUse']): number | null {
  if (greenG === null) return null;
  return greenG + (inUse.plainSaltG ?? 0) + (inUse.curingSaltG ?? 0) + (inUse.sugarG ?? 0);
}

function massesOf(
  piece: Pick<PieceValues, 'greenG' | 'inUse' | 'targetMassG'> & { lossFraction: number | null },
  usesCure: boolean,
) {
  const { greenG, inUse } = piece;
  const grams = usesCure ? inUse.curingSaltG : (inUse.curingSaltG ?? 0);
  const curingSaltG: Span | null = grams === null ? null : { low: grams, high: grams };
  const finishedG = greenG === null || piece.lossFraction === null ? null : greenG * (1 - piece.lossFraction);
  return { greenG, totalG: totalOf(greenG, inUse), finishedG, curingSaltG };
}

function lossOf(
  piece: DryCurePiece,
  greenG: number | null,
  saltFraction: number | null,
  lossTarget: number | null,
) {
  const nowG = entryValue('mass', piece.now);
  return {
    targetMassG: greenG === null || lossTarget === null ? null : massAfterLoss(greenG, lossTarget),
    saltAtTargetFraction:
      saltFraction === null || lossTarget === null ? null : saltAfterLoss(saltFraction, lossTarget),
    lossFraction: greenG === null || nowG === null ? null : 1 - nowG / greenG,
  };
}

function missingInputs(state: DryCureState): MissingInput[] {
  const { slice, cure, values, usesCure } = state;
  const missing: MissingInput[] = [];
  const need = (field: string, neededFor: string) => missing.push({ field, neededFor });
  if (slice.pieces.length === 0) return missing;
  for (const piece of values.pieces) {
    if (piece.greenG === null) need(`dryCure.pieces.${piece.id}.skinOff`, 'dry-cure.dose');
    if (piece.thicknessMm === null) need(`dryCure.pieces.${piece.id}.thickness`, 'dry-cure.time');
  }
  if (values.chillC === null) need('dryCure.chillTemp', 'dry-cure.cold');
  if (slice.finish === null) need('dryCure.finish', 'dry-cure.nitrate');
  if (!usesCure) return missing;
  if (cure.ruleSetId === null) need('cure.ruleSetId', 'dry-cure.verdict');
  if (slice.product === null) need('dryCure.product', 'dry-cure.verdict');
  if (values.pack.problem === 'missing') need('dryCure.pack.strength.nitrite', 'dry-cure.dose');
  if (values.pack.nitrateFraction === null) need('dryCure.pack.strength.nitrate', 'dry-cure.nitrate');
  if (slice.method !== 'equilibrium') return missing;
  if (entryValue('ppm', slice.nitriteTarget) === null) need('dryCure.nitriteTarget', 'dry-cure.dose');
  if (state.readabilityG === null) need('cure.scaleReadability', 'dry-cure.dose');
  return missing;
}

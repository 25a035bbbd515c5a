import {
  type CoolFacts,
  type CoolLeg,
  type CoolRuleSet,
  coolRuleSet,
  curedState,
  exactC,
  UNKNOWN_COOL_FACTS,
} from '../cooling/index.ts';
import { type Composition, densityKgM3 } from '../heat/index.ts';
import {
  type CookFacts,
  type CookLimit,
  cookLimit,
  cookRuleSet,
  type Hold,
  type LimitRefusal,
  resolveLimit,
  thresholdC,
  UNKNOWN_FACTS,
} from '../lethality/index.ts';
import type { CrustSlice, MouldItem, MouldSlice } from '../mould/index.ts';
import { type Entry, entryValue } from '../quantities/index.ts';
import { type BodyChange, type MouldBody, mouldBody } from './body.ts';
import { type Coat, coatOf } from './coat.ts';
import { type PlanReading, readPlan } from './read-plan.ts';
import type { CookPlanSlice } from './slice.ts';
import { type PlanStage, planStages } from './stages.ts';

/** Mass fractions of the mix as the formula gives them; null while a line leaves one open. */
export interface MixFractions {
  readonly water: number | null;
  readonly protein: number | null;
  readonly fat: number | null;
  readonly salt: number | null;
}

/** What other subjects know that a plan is made with. */
export interface CookPlanContext {
  readonly moulds: MouldSlice;
  readonly crust: CrustSlice | null;
  readonly mix: MixFractions | null;
  readonly cookRuleSetId: string | null;
  readonly cookLimitId: string | null;
  readonly coolRuleSetId: string | null;
  /** Height above the sea where the thermometer check names one: it stands in for the plan's own. */
  readonly altitude?: Entry;
  readonly facts?: CookFacts;
  readonly coolFacts?: CoolFacts;
}

/** The limit of the plan as it stands for this product. */
export interface PlanLimit {
  readonly limit: CookLimit;
  readonly hold: Hold;
  /** Core a probe in °C must show, before its error. */
  readonly thresholdC: number;
}

/** A cooking and chilling problem as plain data: it can be handed to a worker. */
export interface PlanProblem {
  readonly shape: MouldBody['shape'];
  readonly volumeMl: number;
  readonly massG: number;
  readonly composition: Composition;
  readonly densityKgM3: number;
  readonly airFraction: number;
  readonly coat: Coat;
  readonly startC: number;
  readonly stages: readonly PlanStage[];
  readonly targetC: number;
  readonly holdMin: number;
  /** What the core must show and how long by the limit that was chosen; null without one. */
  readonly limit: { readonly thresholdC: number; readonly holdMin: number } | null;
  readonly cool: {
    readonly ruleSetId: string;
    readonly legs: readonly CoolLeg[];
    /** False where the set asks for a cure that is not shown: no prediction may then say "within". */
    readonly usable: boolean;
    /** Rest and press may last this long before the chill must begin. */
    readonly chillStartMaxMin: number | null;
  } | null;
}

/** Everything read off the batch on the way to a problem. */
export interface PlanGround {
  readonly mould: MouldItem | null;
  readonly reading: PlanReading;
  readonly body: MouldBody | null;
  readonly limit: PlanLimit | null;
  readonly refusal: LimitRefusal | null;
  readonly coolSet: CoolRuleSet | null;
  readonly composition: Composition | null;
  /** The formula does not say what the mix is made of: the plan's own figures are counted with. */
  readonly mixAssumed: boolean;
  readonly targetC: number | null;
  readonly holdMin: number | null;
  readonly problem: PlanProblem | null;
}

/** Other values than the plan's own, °C and mm, to see what a change would do. */
export interface PlanChange extends BodyChange {
  readonly mediumC?: number;
  readonly bathStartC?: number;
  readonly startC?: number;
  readonly targetC?: number;
}

/** °C at which the mix is weighed into its mould, for its air. */
const FILLED_AT_C = 10;
/** A mix is never counted with more air than this. */
const MOST_AIR = 0.5;

/** The mould the plan is for: the one named, or the only one. */
function plannedMould({ mouldId }: CookPlanSlice, { moulds }: MouldSlice): MouldItem | null {
  if (mouldId !== null) return moulds.find(({ id }) => id === mouldId) ?? null;
  return moulds.length === 1 ? (moulds[0] ?? null) : null;
}

/** The plan at the height that the thermometer check names, where it names one. */
function placed(slice: CookPlanSlice, { altitude }: CookPlanContext): CookPlanSlice {
  return altitude === undefined ? slice : { ...slice, altitude };
}

/** Turns a batch's moulds, mix, plan and rules into a problem of heat; null where something is missing. */
export function planGround(
  slice: CookPlanSlice,
  context: CookPlanContext,
  change: PlanChange = {},
): PlanGround {
  const own = readPlan(placed(slice, context));
  const reading: PlanReading = {
    ...own,
    mediumC: change.mediumC ?? own.mediumC,
    bathStartC: change.bathStartC ?? own.bathStartC,
    startC: change.startC ?? own.startC,
  };
  const mould = plannedMould(slice, context.moulds);
  const body = mould === null ? null : mouldBody(mould, change);
  const { limit, refusal } = limitOf(context);
  const coolSet = coolRuleSet(context.coolRuleSetId) ?? null;
  const { composition, mixAssumed } = compositionOf(slice, context.mix);
  const targetC =
    change.targetC ?? ownOr(slice.target.text, entryValue('temperature', slice.target), limit?.thresholdC);
  const holdMin = ownOr(slice.hold.text, entryValue('time', slice.hold), (limit?.hold.s ?? 0) / 60);
  const ground = {
    ...{ mould, reading, body, limit, refusal, coolSet, composition, mixAssumed, targetC, holdMin },
  };
  return { ...ground, problem: problemOf(slice, context, ground) };
}

/** What was typed, or where nothing was, what stands for it. A text that cannot be read gives null. */
function ownOr(text: string, typed: number | null, otherwise: number | undefined): number | null {
  return text.trim() === '' ? (otherwise ?? null) : typed;
}

function limitOf({ cookRuleSetId, cookLimitId, facts = UNKNOWN_FACTS }: CookPlanContext): {
  limit: PlanLimit | null;
  refusal: LimitRefusal | null;
} {
  const limit = cookLimit(cookRuleSet(cookRuleSetId), cookLimitId);
  if (limit === undefined) return { limit: null, refusal: null };
  const resolved = resolveLimit(limit, facts);
  if (!resolved.ok) return { limit: null, refusal: resolved.reason };
  return { limit: { limit, hold: resolved.hold, thresholdC: thresholdC(limit.stated, 'C') }, refusal: null };
}

/**
 * Water, protein and fat of the formula, salt as ash, the rest as carbohydrate, which conducts and stores heat much
 * as the small remainder of a mix does. Where the formula leaves one of the three open, the plan's own figures.
 */
function compositionOf(
  slice: CookPlanSlice,
  mix: MixFractions | null,
): { composition: Composition | null; mixAssumed: boolean } {
  const known = mix !== null && mix.water !== null && mix.protein !== null && mix.fat !== null;
  const water = known ? mix.water : entryValue('fraction', slice.water);
  const protein = known ? mix.protein : entryValue('fraction', slice.protein);
  const fat = known ? mix.fat : entryValue('fraction', slice.fat);
  if (water === null || protein === null || fat === null || water + protein + fat <= 0)
    return { composition: null, mixAssumed: !known };
  const ash = known ? (mix.salt ?? 0) : USUAL_SALT;
  const rest = 1 - water - protein - fat - ash;
  if (rest < -0.02) return { composition: null, mixAssumed: !known };
  return {
    composition: { water, protein, fat, carbohydrate: Math.max(0, rest), fibre: 0, ash },
    mixAssumed: !known,
  };
}

/** Salt and minerals of a seasoned mix, mass fraction. Common practice, no source. */
const USUAL_SALT = 0.015;

function problemOf(
  slice: CookPlanSlice,
  context: CookPlanContext,
  ground: Omit<PlanGround, 'problem'>,
): PlanProblem | null {
  const { reading, body, limit, coolSet, composition, targetC, holdMin } = ground;
  const densityGPerMl = entryValue('density', context.moulds.density);
  if (body === null || composition === null || densityGPerMl === null || densityGPerMl <= 0) return null;
  if (reading.missing.length > 0 || reading.wallMm === null || reading.startC === null) return null;
  if (targetC === null || holdMin === null) return null;
  const crust = crustOf(context.crust, ground.mould);
  if (crust === 'unknown') return null;
  const coat = coatOf(body, { vessel: slice.vessel, wallMm: reading.wallMm, lid: slice.lid, crust });
  const followToC = Math.min(Number.POSITIVE_INFINITY, ...(coolSet?.legs ?? []).map(({ to }) => exactC(to)));
  const stages = planStages({
    ...{ slice, reading, body, coat, targetC, holdMin, followToC },
    crusted: crust !== null,
  });
  if (stages === null) return null;
  const massKgM3 = 1000 * densityGPerMl;
  const airless = densityKgM3(composition, FILLED_AT_C);
  return {
    shape: body.shape,
    volumeMl: body.volumeMl,
    massG: body.volumeMl * densityGPerMl,
    composition,
    densityKgM3: massKgM3,
    airFraction: Math.min(MOST_AIR, Math.max(0, 1 - massKgM3 / airless)),
    coat,
    startC: reading.startC,
    stages,
    targetC,
    holdMin,
    limit: limit && { thresholdC: limit.thresholdC, holdMin: limit.hold.s / 60 },
    cool: coolSet && {
      ruleSetId: coolSet.id,
      legs: coolSet.legs,
      usable:
        coolSet.cured === null ||
        curedState(coolSet.cured, context.coolFacts ?? UNKNOWN_COOL_FACTS) === 'met',
      chillStartMaxMin: coolSet.chillStartMaxMin ?? null,
    },
  };
}

/**
 * The crust round the mix of a pie. The mould's measures are taken as the room inside it, as its fill is: where they
 * are the tin's own the answer is the slower one.
 */
function crustOf(
  crust: CrustSlice | null,
  mould: MouldItem | null,
): { wallMm: number; lidMm: number } | null | 'unknown' {
  if (crust === null || mould === null) return null;
  if (crust.mouldId !== null && crust.mouldId !== mould.id) return null;
  const wallMm = entryValue('length', crust.thickness);
  const lidMm = entryValue('length', crust.lidThickness);
  return wallMm === null || lidMm === null ? 'unknown' : { wallMm, lidMm };
}

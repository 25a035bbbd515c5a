import { type BinderFindingId, type BinderValues, binderStage } from '../binder/index.ts';
import { type BrineFindingId, type BrineValues, brineStage } from '../brine/index.ts';
import { type CasingsFindingId, type CasingsValues, casingsStage } from '../casings/index.ts';
import {
  type ChillBudgetFindingId,
  type ChillBudgetValues,
  chillBudgetStage,
} from '../chill-budget/index.ts';
import { type CoolFindingId, type CoolValues, coolFactsOf, coolStage } from '../cooling/index.ts';
import { type CureFindingId, type CureValues, cureStage } from '../cure/index.ts';
import { type DryCureFindingId, type DryCureValues, dryCureStage } from '../dry-cure/index.ts';
import { type DryingFindingId, type DryingValues, dryingStage } from '../drying/index.ts';
import type { Finding, MissingInput, StageResult, Verdict } from '../findings/index.ts';
import { type FormulaFindingId, type FormulaValues, formulaStage } from '../formula/index.ts';
import { type GeleeFindingId, type GeleeValues, geleeStage } from '../gelee/index.ts';
import { type CoolingGrowth, growthFacts, growthInCooling } from '../growth/index.ts';
import type { CompositionTable } from '../ingredients/index.ts';
import type { LabelFindingId, LabelValues } from '../label/index.ts';
import { type CookFindingId, type CookValues, cookFacts, cookStage } from '../lethality/index.ts';
import {
  type CrustFindingId,
  type CrustValues,
  crustStage,
  isCrustBegun,
  type MouldFindingId,
  type MouldValues,
  mouldStage,
} from '../mould/index.ts';
import { type PressFindingId, type PressValues, pressStage } from '../press/index.ts';
import { entryValue } from '../quantities/index.ts';
import { type SeasoningFindingId, type SeasoningValues, seasoningStage } from '../seasoning/index.ts';
import { BUILT_STANDING, type Withdrawal } from '../sources/index.ts';
import {
  daysByThermometer,
  type ThermometerFindingId,
  type ThermometerValues,
  thermometerStage,
} from '../thermometer/index.ts';
import { placedThermometers } from './altitude.ts';
import { binderContext } from './binder-context.ts';
import { isLabelBegun, labelOf } from './label-of.ts';
import type { Batch } from './record.ts';
import { type RecordFindingId, recordStage } from './record-stage.ts';
import { type RuleSetUsed, ruleSetsUsed } from './rule-sets-used.ts';
import { standingStage } from './standing-stage.ts';
import { CALC_VERSION } from './version.ts';
import { withoutBareNitrite, withoutBareSalt } from './whole-muscle.ts';
import { withThermometers } from './with-thermometers.ts';

export interface AssessContext {
  readonly composition: CompositionTable;
  /** ISO date or date-time of today, for overdue checks of rule sets. */
  readonly today: string;
  /** Rule sets that stand no more, as the caller last heard; the list of this edition where it heard nothing. */
  readonly withdrawn?: readonly Withdrawal[];
}

/** All that is made of a batch, stage by stage, and the whole of it in the order of the work. */
export interface Assessment {
  readonly calcVersion: string;
  readonly ruleSets: readonly RuleSetUsed[];
  readonly formula: StageResult<FormulaValues, FormulaFindingId>;
  readonly cure: StageResult<CureValues, CureFindingId>;
  /** Null: the batch has no such slice. One that its worksheet has begun and nobody filled says nothing. */
  readonly dryCure: StageResult<DryCureValues, DryCureFindingId> | null;
  readonly brine: StageResult<BrineValues, BrineFindingId> | null;
  readonly drying: StageResult<DryingValues, DryingFindingId> | null;
  readonly seasoning: StageResult<SeasoningValues, SeasoningFindingId> | null;
  readonly chillBudget: StageResult<ChillBudgetValues, ChillBudgetFindingId> | null;
  readonly binder: StageResult<BinderValues, BinderFindingId> | null;
  readonly casings: StageResult<CasingsValues, CasingsFindingId> | null;
  readonly gelee: StageResult<GeleeValues, GeleeFindingId> | null;
  readonly mould: StageResult<MouldValues, MouldFindingId>;
  /** Null too while its worksheet has begun it and nobody chose a mould or typed anything. */
  readonly crust: StageResult<CrustValues, CrustFindingId> | null;
  readonly cook: StageResult<CookValues, CookFindingId>;
  /** Of the thermometers a log of the batch names; null: none does. */
  readonly thermometer: StageResult<ThermometerValues, ThermometerFindingId> | null;
  readonly press: StageResult<PressValues, PressFindingId>;
  readonly cool: StageResult<CoolValues, CoolFindingId>;
  /** Growth in each cooling by published sets: information, of which no verdict hears. */
  readonly growth: readonly CoolingGrowth[];
  /** Without nutrition, which stops nothing. Null: nobody has worked on a label. */
  readonly label: StageResult<LabelValues, LabelFindingId> | null;
  readonly record: StageResult<Record<string, never>, RecordFindingId>;
  readonly findings: readonly Finding[];
  readonly verdicts: readonly Verdict[];
  readonly missing: readonly MissingInput[];
}

/** Plan of the smallest fill, which a press board must go into; null while a mould is unknown. */
function smallestPlanMm2({ moulds }: MouldValues): number | null {
  const plans = moulds.map((mould) => mould.planAreaMm2);
  return plans.length === 0 || plans.includes(null) ? null : Math.min(...plans.map((plan) => plan ?? 0));
}

/** The check of the thermometers that logs of the batch name. One that lies in the drawer is not its business. */
function thermometersUsed(batch: Batch, today: string): Assessment['thermometer'] {
  const { process } = batch;
  const thermometers = placedThermometers(batch);
  if (!thermometers) return null;
  const days = daysByThermometer(process.logs);
  const used = thermometers.thermometers.filter(({ id }) =>
    process.logs.some((log) => log.thermometerId === id),
  );
  return used.length === 0
    ? null
    : thermometerStage({ ...thermometers, thermometers: used }, { today, days });
}

/**
 * Assesses a whole batch. Pure: the same batch, table and day give the same assessment everywhere.
 *
 * @param entered the record as entered
 * @returns numbers, findings, verdicts and what is missing; a missing input never gives a pass
 */
export function assess(entered: Batch, { composition, today, withdrawn }: AssessContext): Assessment {
  const batch = withThermometers(entered, today);
  const { familyId } = batch.formula;
  const finishedMassG = entryValue('mass', batch.product.finished);
  const formulaResult = formulaStage(batch.formula, { composition, finishedMassG });
  const formula = withoutBareSalt(batch, formulaResult);
  const cureResult = cureStage(batch, { composition, formulaResult, finishedMassG });
  const cure = withoutBareNitrite(batch, cureResult);
  const dryCure = batch.dryCure ? dryCureStage({ cure: batch.cure, dryCure: batch.dryCure }) : null;
  const brine = batch.brine ? brineStage({ cure: batch.cure, brine: batch.brine }, { finishedMassG }) : null;
  const drying = batch.drying ? dryingStage(batch.drying) : null;
  const { totalG } = formula.values.mix;
  const hasLiningLine = formula.values.lined !== null;
  const seasoning = batch.seasoning ? seasoningStage(batch.seasoning, { totalG, today }) : null;
  const chillBudget = batch.chillBudget ? chillBudgetStage(batch.chillBudget, { familyId }) : null;
  const casings = batch.casings ? casingsStage(batch.casings, { totalG }) : null;
  const gelee = batch.gelee ? geleeStage(batch.gelee) : null;
  const mould = mouldStage(batch.mould, { totalMassG: totalG, hasLiningLine });
  const crust =
    batch.crust && isCrustBegun(batch.crust) ? crustStage(batch.crust, batch.mould, { hasLiningLine }) : null;
  const binder = batch.binder
    ? binderStage(batch.binder, binderContext(batch, formula.values.mix, mould.values, composition))
    : null;
  const thermometer = thermometersUsed(batch, today);
  const cook = cookStage(batch, cookFacts(formula.values, familyId, finishedMassG));
  const press = pressStage(batch.press, { familyId, planAreaMm2: smallestPlanMm2(mould.values) });
  const cool = coolStage(batch, coolFactsOf(cure.values, brine?.values ?? null));
  const growth = growthInCooling(
    batch.process,
    growthFacts(cool.values.facts, formula.values.mix.salt.maxFraction),
  );
  const label =
    batch.label && isLabelBegun(batch.label) ? labelOf(batch, composition, null, formula.values) : null;
  const all: readonly (StageResult<unknown> | null)[] = [
    formula,
    cure,
    ...[dryCure, brine, drying],
    ...[binder, seasoning, chillBudget],
    ...[mould, crust, casings, gelee, thermometer, cook, press, cool],
    label,
    standingStage(batch, withdrawn ?? BUILT_STANDING.withdrawn),
  ];
  const judged = all.filter((stage) => stage !== null);
  const judgedVerdicts = judged.flatMap((stage) => stage.verdicts);
  const record = recordStage(batch, judgedVerdicts);
  return {
    calcVersion: CALC_VERSION,
    ruleSets: ruleSetsUsed(batch, today),
    formula,
    cure,
    dryCure,
    brine,
    drying,
    binder,
    seasoning,
    chillBudget,
    casings,
    gelee,
    mould,
    crust,
    thermometer,
    cook,
    press,
    cool,
    growth,
    label,
    record,
    findings: [...judged, record].flatMap((stage) => stage.findings),
    verdicts: judgedVerdicts,
    missing: judged.flatMap((stage) => stage.missing),
  };
}

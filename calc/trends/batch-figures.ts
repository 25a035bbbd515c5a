import type { Assessment, Batch, BatchState } from '../batch/index.ts';
import { stateOf } from '../batch/index.ts';
import type { VerdictState } from '../findings/index.ts';
import type { LinePart } from '../formula/index.ts';
import { compensatedSum, entryValue } from '../quantities/index.ts';
import { yieldStage } from '../yield/index.ts';

const MS_PER_MIN = 60_000;

/** One leg of the cooling rule as the readings show it at worst. */
export interface LegFigure {
  readonly id: string;
  readonly worstMin: number | null;
  readonly state: VerdictState;
}

/** What batches are compared by. Null: not recorded, and never zero. Masses in g, times in min. */
export interface BatchFigures {
  readonly id: string;
  readonly name: string;
  readonly batchNo: string;
  readonly day: string;
  readonly demo: boolean;
  readonly familyId: string | null;
  readonly state: BatchState;
  /** Of everything in the bowl, by part; a part the formula does not have is left out. */
  readonly shares: Readonly<Partial<Record<LinePart, number | null>>>;
  readonly saltFraction: number | null;
  readonly nitritePpmTotal: number | null;
  readonly boughtG: number | null;
  readonly trimmedG: number | null;
  readonly filledG: number | null;
  readonly finishedG: number | null;
  readonly cookLossFraction: number | null;
  /** Into the heat to the first reading at the limit, of the ruling log. */
  readonly cookMin: number | null;
  readonly comeUpMin: number | null;
  readonly peakC: number | null;
  readonly coolRuleSetId: string | null;
  readonly legs: readonly LegFigure[];
  readonly deviations: number;
  readonly verdicts: Readonly<Record<VerdictState, number>>;
  readonly oven: string;
}

const known = (values: readonly (number | null)[]): number | null =>
  values.length === 0 || values.includes(null) ? null : compensatedSum(values.map((value) => value ?? 0));

/** What was bought and what was left after trimming, over all trials of the batch. */
function trimmed(batch: Batch): Pick<BatchFigures, 'boughtG' | 'trimmedG'> {
  const trials = batch.yield ? yieldStage(batch.yield).values.tests.flatMap((test) => test.trials) : [];
  return {
    boughtG: known(trials.map(({ purchasedG }) => purchasedG)),
    trimmedG: known(trials.map(({ usableG }) => usableG)),
  };
}

/** Minutes from the start of heating to the first reading at the limit. */
function cookMinutes(batch: Batch, { cook }: Assessment): number | null {
  const { logs, rulingLogId } = cook.values;
  const reachedMs = logs.find(({ logId }) => logId === rulingLogId)?.hold?.firstReachedMs ?? null;
  const startedAt = batch.process.steps.find(({ kind }) => kind === 'cook')?.startedAt ?? null;
  if (reachedMs === null || startedAt === null) return null;
  const minutes = (reachedMs - Date.parse(startedAt)) / MS_PER_MIN;
  return minutes > 0 ? minutes : null;
}

/** The worst of all logs of the first cooling, leg by leg. */
function legFigures({ cool }: Assessment): LegFigure[] {
  const { ruleSet, coolings } = cool.values;
  const logs = coolings[0]?.logs ?? [];
  return (ruleSet?.legs ?? []).map(({ id }) => {
    const results = logs.flatMap((log) => log.legs.filter(({ leg }) => leg.id === id));
    const worst = results.map(({ judged }) => judged.worstMin);
    return {
      id,
      worstMin: worst.length === 0 || worst.includes(null) ? null : Math.max(...worst.map((min) => min ?? 0)),
      state: cool.verdicts.find((verdict) => verdict.id === `cool.leg.${id}`)?.state ?? 'cannot-tell',
    };
  });
}

/**
 * The figures one batch is compared by.
 *
 * @param day the day of the work, as its summary tells it
 */
export function batchFigures(batch: Batch, assessment: Assessment, day: string): BatchFigures {
  const { formula, cure, mould, cook, verdicts } = assessment;
  const { lines, totalG } = formula.values.mix;
  const shares: Partial<Record<LinePart, number | null>> = {};
  for (const part of new Set(lines.filter((line) => line.part !== 'lining').map((line) => line.part))) {
    const massG = known(lines.filter((line) => line.part === part).map((line) => line.massG));
    shares[part] = massG === null || totalG === null || !(totalG > 0) ? null : massG / totalG;
  }
  const filledG = mould.values.filledTotalG;
  const finishedG = entryValue('mass', batch.product.finished);
  const ruling = cook.values.logs.find(({ logId }) => logId === cook.values.rulingLogId);
  const count = (state: VerdictState) => verdicts.filter((verdict) => verdict.state === state).length;
  return {
    id: batch.id,
    name: batch.product.name.trim(),
    batchNo: batch.product.batchNo.trim(),
    day,
    demo: batch.demo,
    familyId: batch.formula.familyId,
    state: stateOf(batch).state,
    shares,
    saltFraction: formula.values.mix.salt.fraction,
    nitritePpmTotal: cure.values.nitritePpmTotal,
    ...trimmed(batch),
    filledG,
    finishedG,
    cookLossFraction: filledG !== null && filledG > 0 && finishedG !== null ? 1 - finishedG / filledG : null,
    cookMin: cookMinutes(batch, assessment),
    comeUpMin: ruling?.comeUp.minutes ?? null,
    peakC: ruling?.hold?.peakC ?? null,
    coolRuleSetId: batch.process.coolRuleSetId,
    legs: legFigures(assessment),
    deviations: batch.deviations.length,
    verdicts: { pass: count('pass'), fail: count('fail'), 'cannot-tell': count('cannot-tell') },
    oven: batch.cookPlan?.ovenRecord.name.trim() ?? '',
  };
}

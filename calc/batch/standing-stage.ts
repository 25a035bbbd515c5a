import type { Finding, StageResult, Verdict } from '../findings/index.ts';
import { type LimitStage, type Withdrawal, withdrawalsFor } from '../sources/index.ts';
import type { Batch } from './record.ts';

export type StandingFindingId = 'limits.withdrawn';

const FIELD: Readonly<Record<LimitStage, string>> = {
  cure: 'cure.ruleSetId',
  cook: 'process.cookRuleSetId',
  cool: 'process.coolRuleSetId',
};

/**
 * A stop for each rule set of the batch that was withdrawn, and a verdict that nobody can pass it: what it judged
 * stays on the page, and no longer counts for a release.
 */
export function standingStage(
  batch: Batch,
  withdrawn: readonly Withdrawal[],
): StageResult<Record<string, never>, StandingFindingId> {
  const touching = withdrawalsFor(batch, withdrawn);
  const findings = touching.map(
    ({ stage, ruleSetId, from, reason }): Finding<StandingFindingId> => ({
      id: 'limits.withdrawn',
      severity: 'stop',
      stage,
      field: FIELD[stage],
      params: { stage, ruleSetId, from, reason },
    }),
  );
  const verdicts = findings.map(
    ({ stage, params }): Verdict<StandingFindingId> => ({
      id: `limits.standing.${stage}`,
      stage,
      state: 'cannot-tell',
      reason: 'limits.withdrawn',
      params,
      basis: null,
      mark: null,
    }),
  );
  return { values: {}, findings, verdicts, missing: [] };
}

import type { Params, VerdictState } from '../findings/index.ts';
import { worstOf } from '../probe-log/index.ts';
import type { ProcessSlice } from '../process/index.ts';
import type { CoolFacts } from './cured.ts';
import type { CoolFindingId } from './finding-ids.ts';
import { COOL_RULE_SETS } from './rule-sets/index.ts';
import { coolStage } from './stage.ts';

/** One leg with what a sentence about it needs. */
export interface ComparedLeg {
  readonly id: string;
  readonly state: VerdictState;
  readonly reason: CoolFindingId;
  readonly params: Params;
  /** Longest the readings allow, min; null where they do not show it. */
  readonly worstMin: number | null;
}

/** What one log comes to under each rule set, side by side. Never averaged, never the best of them. */
export interface CoolComparison {
  readonly ruleSetId: string;
  readonly state: VerdictState;
  readonly legs: readonly ComparedLeg[];
}

/** Judge the same log by every rule set. For reading; the set a person chose is the one that rules. */
export function coolAcrossRuleSets(
  slices: { readonly process: ProcessSlice },
  facts: CoolFacts,
): CoolComparison[] {
  return COOL_RULE_SETS.map(({ id }) => {
    const process = { ...slices.process, coolRuleSetId: id };
    const { verdicts } = coolStage({ process }, facts);
    const legs = verdicts.map(({ id: legId, state, reason, params }): ComparedLeg => {
      const { worstMin } = params;
      return { id: legId, state, reason, params, worstMin: typeof worstMin === 'number' ? worstMin : null };
    });
    return { ruleSetId: id, state: worstOf(legs)?.state ?? 'cannot-tell', legs };
  });
}

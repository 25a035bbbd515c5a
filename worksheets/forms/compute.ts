import type { Batch } from '@larderwright/calc/batch';
import { coolRuleSet } from '@larderwright/calc/cooling';
import { cureRuleSet } from '@larderwright/calc/cure';
import { cookRuleSet, meatKinds } from '@larderwright/calc/lethality';
import type { RuleSet } from '@larderwright/calc/sources';
import { loadCompute } from '../batch-sheet/compute.ts';
import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { type CardHead, cardHead } from '../parts/card-head.ts';
import { nowIso } from '../state/clock.ts';
import { PLAN_WORDS } from '../words/haccp.ts';
import { buildPlan } from './build-plan.ts';
import { buildLogSheet, type LogSheet } from './log-model.ts';
import type { PlanSheet } from './plan-model.ts';

/** The forms of one batch. */
export interface FormsComputed {
  readonly log: Readonly<Record<Paper, LogSheet>>;
  readonly plan: PlanSheet;
  /** With the rule sets of cure, cook and cooling, and how they are known. */
  readonly head: CardHead;
  readonly stops: readonly string[];
}

const known = ({ mark }: RuleSet) => (mark === 'memory' ? `; ${PLAN_WORDS.fromMemory}` : `; ${mark}`);

/** Fetches what the batch sheet computes with and gives the function from batch to forms. */
export async function loadForms(): Promise<(batch: Batch) => FormsComputed> {
  const computeSheet = await loadCompute();
  return (batch) => {
    const { assessment, model, composition } = computeSheet(batch);
    const meats = meatKinds(
      batch.formula.lines.map(({ ingredientId }) => ingredientId),
      composition,
    );
    const sets = [
      cureRuleSet(batch.cure.ruleSetId),
      cookRuleSet(batch.process.cookRuleSetId),
      coolRuleSet(batch.process.coolRuleSetId),
    ].filter((set) => set !== null && set !== undefined);
    const head = cardHead(batch, sets, nowIso());
    return {
      log: {
        a4: buildLogSheet(batch, assessment, meats, model, 'a4'),
        letter: buildLogSheet(batch, assessment, meats, model, 'letter'),
      },
      plan: buildPlan(batch, assessment, model),
      head: {
        ...head,
        ruleSets: head.ruleSets.map((line, at) => `${line}${sets[at] ? known(sets[at]) : ''}`),
      },
      stops: model.stops,
    };
  };
}

import {
  CURE_RULE_SETS,
  type CureContext,
  type CureLimit,
  type CureSlice,
  cureStage,
} from '@larderwright/calc/cure';
import type { FormulaLine, FormulaSlice } from '@larderwright/calc/formula';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { enteredEntry } from '@larderwright/calc/quantities';
import { cureSlice, line } from './demo-formula.ts';

const composition = await loadIngredients();

export function run(formula: FormulaSlice, slice: CureSlice = cureSlice(), more: Partial<CureContext> = {}) {
  return cureStage({ formula, cure: slice }, { composition, ...more });
}

export type Run = ReturnType<typeof run>;

export function state(result: Run, id: string) {
  const found = result.verdicts.find((item) => item.id === id);
  return found ? `${found.state} ${found.reason}` : 'none';
}

export function ids(result: Run) {
  return result.findings.map(({ id }) => id);
}

export function severity(result: Run, id: string) {
  return result.findings.find((finding) => finding.id === id)?.severity ?? 'none';
}

/** A kilogram of pork with one curing salt and some plain salt. */
export function porkAnd(curingSalt: FormulaLine, salt = '12'): FormulaSlice {
  return {
    familyId: 'country-terrine',
    lines: [
      line('pork', 'lean', '1000', 'kitchen-pork-shoulder-80-20'),
      line('salt', 'salt', salt, 'salt'),
      curingSalt,
    ],
    saltTarget: enteredEntry('1.7', '%'),
  };
}

/** A limit by its id. */
export function limit(id: string): CureLimit {
  const found = CURE_RULE_SETS.flatMap(({ limits }) => limits).find((one) => one.id === id);
  if (!found) throw new Error(`no limit ${id}`);
  return found;
}

import { type Assessment, assess, type Batch, withThermometers } from '@larderwright/calc/batch';
import { type CompositionTable, loadIngredients } from '@larderwright/calc/ingredients';
import { meatKinds } from '@larderwright/calc/lethality';
import { nowIso } from '../state/clock.ts';
import { $limits } from '../state/limits.ts';
import { binderWords } from '../words/binder.ts';
import { brineWords } from '../words/brine.ts';
import { casingsWords } from '../words/casings.ts';
import { chillBudgetWords } from '../words/chill-budget.ts';
import { cookWords } from '../words/cook.ts';
import { coolWords } from '../words/cool.ts';
import { crustWords } from '../words/crust.ts';
import { cureWords } from '../words/cure.ts';
import { dryCureWords } from '../words/dry-cure.ts';
import { dryingWords } from '../words/drying.ts';
import { formulaWords } from '../words/formula.ts';
import { geleeWords } from '../words/gelee.ts';
import { learnWords } from '../words/index.ts';
import { labelWords } from '../words/label.ts';
import { mouldWords } from '../words/mould.ts';
import { pressWords } from '../words/press.ts';
import { recordWords } from '../words/record.ts';
import { seasoningWords } from '../words/seasoning.ts';
import { standingWords } from '../words/standing.ts';
import { thermometerWords } from '../words/thermometer.ts';
import { asPrinted } from './build/as-printed.ts';
import { buildSheet } from './build/index.ts';
import { planChanged } from './build/planned.ts';
import { drawCode } from './draw-code.ts';
import type { SheetModel } from './sheet-model.ts';

export interface SheetComputed {
  readonly assessment: Assessment;
  readonly model: SheetModel;
  readonly composition: CompositionTable;
  /** Draws the square code of the sheet. */
  readonly drawCode: typeof drawCode;
}

const WORDS = [
  ...[formulaWords, cureWords, dryCureWords, brineWords, dryingWords],
  ...[binderWords, seasoningWords, chillBudgetWords, casingsWords, geleeWords, crustWords],
  ...[mouldWords, thermometerWords, cookWords, pressWords, coolWords, labelWords, recordWords],
  standingWords,
];
for (const words of WORDS) learnWords(words);

/** Fetches the composition table and gives the function from batch to sheet. */
export async function loadCompute(): Promise<(batch: Batch) => SheetComputed> {
  const composition = await loadIngredients();
  return (entered) => {
    const now = nowIso();
    const withdrawn = $limits.get()?.standing.withdrawn;
    const heard = withdrawn ? { withdrawn } : {};
    const meats = meatKinds(
      entered.formula.lines.map(({ ingredientId }) => ingredientId),
      composition,
    );
    const batch = withThermometers(entered, now);
    const assessment = assess(batch, { composition, today: now, ...heard });
    const onPaper = assess(asPrinted(batch, assessment), { composition, today: now, ...heard });
    const model = buildSheet(batch, onPaper, now, meats, planChanged(entered, composition));
    return { assessment, model, composition, drawCode };
  };
}

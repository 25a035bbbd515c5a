import { type Batch, isWholeMuscle, withoutBareNitrite, withoutBareSalt } from '@larderwright/calc/batch';
import { type CureValues, cureStage } from '@larderwright/calc/cure';
import type { Finding, MissingInput, Verdict } from '@larderwright/calc/findings';
import { type FormulaValues, formulaStage } from '@larderwright/calc/formula';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { entryValue } from '@larderwright/calc/quantities';
import { cureWords } from '../words/cure.ts';
import { formulaWords } from '../words/formula.ts';
import { learnWords } from '../words/index.ts';

/** What calc makes of salt and nitrite on the bench. */
export interface CureComputed {
  readonly cure: CureValues;
  readonly formula: FormulaValues;
  /** Of the cure, and those of the formula that belong to salt. */
  readonly findings: readonly Finding[];
  readonly verdicts: readonly Verdict[];
  readonly missing: readonly MissingInput[];
  /** Brine or dry cure salts the meat: nothing of it is told from the formula. */
  readonly isReckonedElsewhere: boolean;
}

/** Fetches the composition table and gives the function that judges a batch with it. */
export async function loadCure(): Promise<(batch: Batch) => CureComputed> {
  const composition = await loadIngredients();
  learnWords(formulaWords);
  learnWords(cureWords);
  return (batch) => {
    const formulaResult = formulaStage(batch.formula, { composition });
    const finishedMassG = entryValue('mass', batch.product.finished);
    const cure = withoutBareNitrite(batch, cureStage(batch, { composition, formulaResult, finishedMassG }));
    const formula = withoutBareSalt(batch, formulaResult);
    const ofSalt = formula.findings.filter(({ field }) => field === 'formula.saltTarget');
    return {
      cure: cure.values,
      formula: formula.values,
      findings: [...cure.findings, ...ofSalt],
      verdicts: cure.verdicts,
      missing: cure.missing,
      isReckonedElsewhere: isWholeMuscle(batch),
    };
  };
}

import { type Batch, isWholeMuscle, withoutBareSalt } from '@larderwright/calc/batch';
import { cureStage } from '@larderwright/calc/cure';
import type { Finding, MissingInput } from '@larderwright/calc/findings';
import { type FormulaLine, type FormulaValues, formulaStage } from '@larderwright/calc/formula';
import { type CompositionTable, loadIngredients } from '@larderwright/calc/ingredients';
import { entryValue } from '@larderwright/calc/quantities';
import { type SourceId, sourceOf } from '@larderwright/calc/sources';
import * as say from '#words/batch-formula/compute.ts';
import { cureWords } from '../words/cure.ts';
import { formulaWords } from '../words/formula.ts';
import { learnWords } from '../words/index.ts';

/** What calc makes of the formula on the bench. */
export interface FormulaComputed {
  readonly values: FormulaValues;
  /** Of the formula; of the cure what belongs to a line, and every stop. */
  readonly findings: readonly Finding[];
  readonly missing: readonly MissingInput[];
  /** Brine or dry cure salts the meat: the formula holds it bare. */
  readonly isSaltElsewhere: boolean;
  /** By line id: where the figures of the line come from, in words. */
  readonly figures: ReadonlyMap<string, string>;
}

/** Sources as they are called in a narrow place; the register has their full names. */
const SHORT: Readonly<Partial<Record<SourceId, string>>> = {
  'usda-sr28': say.usdaSr28,
  'ciqual-2020': say.ansesCiqual2020,
  'kitchen-compositions': say.kitchenValue3Points,
};

/** Where a line's composition comes from, as it stands under the name. */
export function figuresText(line: FormulaLine, table: CompositionTable): string {
  if (line.part === 'curing-salt') return say.itsFiguresComeFromThePack;
  if (Object.values(line.declared).every(({ text }) => text.trim() !== '')) return say.figuresByThePack;
  if (line.ingredientId === null) {
    if (line.name.trim() === '') return '';
    return line.part === 'salt' ? say.countedAsPureSalt : say.noTableFiguresPickListWrite;
  }
  const row = table.get(line.ingredientId);
  if (!row) return say.ingredientNotTableVersion;
  const source = row.source === null ? say.noSource : (SHORT[row.source] ?? sourceOf(row.source).title);
  return row.name === line.name ? say.figures(source) : say.figures2(row.name, source);
}

/** Fetches the composition table and gives the function that computes a batch with it. */
export async function loadFormula(): Promise<(batch: Batch) => FormulaComputed> {
  const composition = await loadIngredients();
  learnWords(formulaWords);
  learnWords(cureWords);
  return (batch) => {
    const { formula, cure, product } = batch;
    const finishedMassG = entryValue('mass', product.finished);
    const formulaResult = formulaStage(formula, { composition, finishedMassG });
    const result = withoutBareSalt(batch, formulaResult);
    const ofCure = cureStage({ formula, cure }, { composition, formulaResult }).findings.filter(
      ({ field, severity }) => severity === 'stop' || field?.startsWith('formula.lines.'),
    );
    return {
      ...result,
      findings: [...result.findings, ...ofCure],
      isSaltElsewhere: isWholeMuscle(batch),
      figures: new Map(formula.lines.map((line) => [line.id, figuresText(line, composition)])),
    };
  };
}

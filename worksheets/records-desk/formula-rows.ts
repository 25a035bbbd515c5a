import type { Batch } from '@larderwright/calc/batch';
import type { Cell } from '@larderwright/calc/exchange';
import { formulaStage } from '@larderwright/calc/formula';
import { type Entry, entryValue } from '@larderwright/calc/quantities';
import * as say from '#words/records-desk/formula-rows.ts';

const HEADINGS = [
  ...[say.line, say.does, say.plannedAsTyped, say.readIn, say.enteredOrDefault, say.countedAs],
  ...[say.plannedG, say.shareOfTheBowl, say.shareOfTheMeatBlock, say.scaleShowedG, say.lot],
  ...[say.nitriteOnPack, say.nitrateOnPack, say.rowOfTheCompositionTable],
];

const BASIS = {
  mass: say.weight,
  'percent-of-meat': say.ofTheMeatBlock,
  'percent-of-total': say.ofTheBowl,
} as const;

const percent = (fraction: number | null): number | null => (fraction === null ? null : fraction * 100);
const declared = (entry: Entry | undefined): number | null =>
  entry ? percent(entryValue('fraction', entry)) : null;

/** The formula as rows of a table, under headings. Shares and grams follow the plan, not the scale. */
export function formulaRows(batch: Batch): Cell[][] {
  // Masses and shares need no composition.
  const { planned } = formulaStage(batch.formula, { composition: new Map() }).values;
  const rows = batch.formula.lines.map((line): Cell[] => {
    const mix = planned.lines.find(({ lineId }) => lineId === line.id);
    return [
      line.name,
      line.part,
      line.amount.text,
      line.amount.unit,
      line.amount.origin,
      BASIS[line.basis],
      mix?.massG ?? null,
      percent(mix?.ofTotalFraction ?? null),
      percent(mix?.ofMeatFraction ?? null),
      entryValue('mass', line.actual),
      line.lot,
      declared(line.cure?.nitrite),
      declared(line.cure?.nitrate),
      line.ingredientId,
    ];
  });
  return [HEADINGS, ...rows];
}

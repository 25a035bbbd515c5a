import type { Batch } from '@larderwright/calc/batch';
import type { Cell } from '@larderwright/calc/exchange';
import { formulaStage } from '@larderwright/calc/formula';
import { type Entry, entryValue } from '@larderwright/calc/quantities';

const HEADINGS = [
  ...['Line', 'Does', 'Planned, as typed', 'Read in', 'Entered or default', 'Counted as'],
  ...['Planned g', 'Share of the bowl %', 'Share of the meat block %', 'Scale showed g', 'Lot'],
  ...['Nitrite on pack %', 'Nitrate on pack %', 'Row of the composition table'],
];

const BASIS = {
  mass: 'weight',
  'percent-of-meat': '% of the meat block',
  'percent-of-total': '% of the bowl',
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

import { type LabelExtra, type LabelLine, newLabelExtra, newLabelLine } from '@larderwright/calc/label';
import { edit } from '../state/store.ts';

/** What the label says of a line, or the blank it starts from. */
export function saidOf(lines: readonly LabelLine[], lineId: string): LabelLine {
  return lines.find(({ id }) => id === lineId) ?? newLabelLine(lineId);
}

/** Writes what the label says of a formula line. The first word about a line begins its row. */
export function sayOfLine(lineId: string, change: Partial<Omit<LabelLine, 'id'>>): void {
  edit((batch) => {
    if (!batch.label) return batch;
    const { lines } = batch.label;
    const said = { ...saidOf(lines, lineId), ...change };
    const known = lines.some(({ id }) => id === lineId);
    return {
      ...batch,
      label: {
        ...batch.label,
        lines: known ? lines.map((line) => (line.id === lineId ? said : line)) : [...lines, said],
      },
    };
  });
}

/** What the label says of a food that another worksheet brings, or the blank it starts from. */
export function saidOfCarried(extras: readonly LabelExtra[], id: string): LabelExtra {
  return extras.find((extra) => extra.id === id) ?? newLabelExtra(id);
}

/** Writes what the label says of such a food. The first word about it begins its row. */
export function sayOfCarried(id: string, change: Partial<Omit<LabelExtra, 'id'>>): void {
  edit((batch) => {
    if (!batch.label) return batch;
    const { extras } = batch.label;
    const said = { ...saidOfCarried(extras, id), ...change };
    const known = extras.some((extra) => extra.id === id);
    return {
      ...batch,
      label: {
        ...batch.label,
        extras: known ? extras.map((extra) => (extra.id === id ? said : extra)) : [...extras, said],
      },
    };
  });
}

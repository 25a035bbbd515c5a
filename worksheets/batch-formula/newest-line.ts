import { newLine } from '@larderwright/calc/batch';
import type { LinePart } from '@larderwright/calc/formula';
import { atom } from 'nanostores';
import { newId } from '../state/clock.ts';
import { addRow } from '../state/rows.ts';

/** The line added last in this visit: its name field takes the focus. */
export const $newestLine = atom<string | null>(null);

/** Adds an empty line and sends the person to it. */
export function addLine(part: LinePart): void {
  const id = newId();
  $newestLine.set(id);
  const line = newLine(id, part);
  addRow('formula.lines', part === 'curing-salt' ? { ...line, name: 'Curing salt' } : line);
}

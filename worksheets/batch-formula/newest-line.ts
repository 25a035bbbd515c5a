import type { LinePart } from '@larderwright/calc/formula';
import { atom } from 'nanostores';
import { addFormulaLine } from '../state/lines.ts';

/** The line added last in this visit: its name field takes the focus. */
export const $newestLine = atom<string | null>(null);

/** Adds an empty line and sends the person to it. */
export function addLine(part: LinePart): void {
  $newestLine.set(addFormulaLine(part));
}

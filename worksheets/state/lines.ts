import { newLine } from '@larderwright/calc/batch';
import type { FormulaLine, LinePart } from '@larderwright/calc/formula';
import * as say from '#words/state/lines.ts';
import { newId } from './clock.ts';
import { addRow } from './rows.ts';

/** Adds an empty line to the formula. */
export function addFormulaLine(part: LinePart): string {
  const id = newId();
  const name = part === 'curing-salt' ? say.curingSalt : part === 'salt' ? say.salt : '';
  const line: FormulaLine = { ...newLine(id, part), name };
  addRow('formula.lines', line);
  return id;
}

/** Adds a curing salt, its strength blank until somebody reads the pack. */
export function addCuringSalt(): void {
  addFormulaLine('curing-salt');
}

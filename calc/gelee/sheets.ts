import type { Mark, SourceId } from '../sources/index.ts';
import type { SheetGrade } from './slice.ts';

/** Sheets of one grade: a range of bloom and the usual mass. */
export interface SheetKind {
  readonly grade: SheetGrade;
  readonly bloomLow: number;
  readonly bloomHigh: number;
  readonly sheetG: number;
  readonly source: SourceId;
  readonly mark: Mark;
}

function sheet(grade: SheetGrade, bloomLow: number, bloomHigh: number, sheetG: number): SheetKind {
  return { grade, bloomLow, bloomHigh, sheetG, source: 'gelatine-linear-rule', mark: 'confirmed' };
}

/**
 * Sheet gelatine by grade. Masses are chosen so that one sheet sets about as much as another: bloom × mass is 400 to 462
 * in every grade. That is the linear rule; by the root one silver sheet sets more than one of platinum.
 */
export const SHEETS: readonly SheetKind[] = [
  sheet('bronze', 125, 155, 3.3),
  sheet('silver', 160, 160, 2.5),
  sheet('gold', 190, 220, 2),
  sheet('platinum', 235, 265, 1.7),
];

/** Sheets of a grade, and the middle of their bloom. */
export function sheetOf(grade: SheetGrade): SheetKind & { readonly bloom: number } {
  const kind = SHEETS.find((row) => row.grade === grade);
  if (!kind) throw new Error(`No sheets of grade ${grade}`);
  return { ...kind, bloom: (kind.bloomLow + kind.bloomHigh) / 2 };
}

/** Sheets that weigh so much: not rounded, since a whole sheet is torn as needed. Null for what is no mass. */
export function sheetsFor(massG: number, sheetG: number): number | null {
  if (!(massG >= 0) || !Number.isFinite(massG) || !(sheetG > 0) || !Number.isFinite(sheetG)) return null;
  return massG / sheetG;
}

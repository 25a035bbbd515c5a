import { compensatedSum, type Entry, formatQuantity, readEntry } from '../quantities/index.ts';
import { isInBowl } from './parts.ts';
import { readLines } from './read-line.ts';
import type { FormulaLine } from './slice.ts';
import { solveMasses } from './solve-masses.ts';

/** Digits kept in a scaled weight. Finer than any kitchen scale, so that scaling again starts from the same grams. */
const SCALED_DIGITS = 8;
/** Decimals of a gram that a large batch keeps besides, so that its lines add up to a milligram. */
const SCALED_DECIMALS = 5;

function digitsOf(massG: number): number {
  return Math.max(SCALED_DIGITS, Math.floor(Math.log10(massG)) + 1 + SCALED_DECIMALS);
}

export type ScaleProblem =
  /** The factor is not a number above zero. */
  | 'unusable-factor'
  /** Some weight is blank or cannot be read, so the total to scale from is unknown. */
  | 'unknown-total'
  | 'percent-over-100'
  | 'no-anchor';

export type Scaled =
  | {
      readonly ok: true;
      readonly lines: FormulaLine[];
      readonly factor: number;
      /** Weights off the scale that were taken out: worth telling the person. */
      readonly clearedWeights: number;
    }
  | { readonly ok: false; readonly problem: ScaleProblem };

/** A number text without the zeros that mean nothing. */
function trimmed(text: string): string {
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

function scaleEntry(entry: Entry, factor: number): Entry {
  const reading = readEntry('mass', entry);
  if (reading.state !== 'ok') return entry;
  const { unit } = reading;
  const massG = reading.value * factor;
  const number = trimmed(formatQuantity('mass', massG, { unit, significant: digitsOf(massG) }));
  return { ...entry, text: unit === entry.unit ? number : `${number} ${unit}` };
}

/**
 * Multiply a formula. Weights are rewritten in the unit they were typed in; shares stay as they are and blank or
 * unreadable fields stay untouched. Weights off the scale belong to the batch that was weighed and are cleared.
 * Salt and cure scale exactly; strong aromatics are for tasting above a fivefold batch.
 *
 * @param factor above 0
 */
export function scaleFormula(lines: readonly FormulaLine[], factor: number): Scaled {
  if (!(factor > 0) || !Number.isFinite(factor)) return { ok: false, problem: 'unusable-factor' };
  return {
    ok: true,
    factor,
    lines: lines.map((line) => ({
      ...line,
      amount: line.basis === 'mass' ? scaleEntry(line.amount, factor) : line.amount,
      actual: { ...line.actual, text: '' },
    })),
    clearedWeights: lines.filter((line) => line.actual.text.trim() !== '').length,
  };
}

/** All shares of the total, adding up to all of it: a recipe in per cent that only wants a batch size. */
function isWholeInPercent(lines: readonly FormulaLine[]): boolean {
  const planned = readLines(lines, new Map()).map((line) => line.planned);
  const bowl = planned.filter(({ part }) => isInBowl(part));
  if (!bowl.every(({ basis, amount }) => basis === 'percent-of-total' && amount !== null)) return false;
  return Math.abs(compensatedSum(bowl.map(({ amount }) => amount ?? 0)) - 1) < 5e-4;
}

function toGrams(line: FormulaLine, totalG: number): FormulaLine {
  const share = readEntry('fraction', line.amount);
  if (line.basis !== 'percent-of-total' || share.state !== 'ok') return line;
  const text = trimmed(
    formatQuantity('mass', share.value * totalG, { significant: digitsOf(share.value * totalG) }),
  );
  return { ...line, basis: 'mass', amount: { ...line.amount, text, unit: 'g' } };
}

function solve(lines: readonly FormulaLine[]) {
  return solveMasses(readLines(lines, new Map()).map((line) => line.planned));
}

function scaleTo(lines: readonly FormulaLine[], wantedG: number, nowG: number | null): Scaled {
  if (!(wantedG > 0) || !Number.isFinite(wantedG)) return { ok: false, problem: 'unusable-factor' };
  const { problem } = solve(lines);
  if (problem) return { ok: false, problem };
  return nowG ? scaleFormula(lines, wantedG / nowG) : { ok: false, problem: 'unknown-total' };
}

/**
 * Scale a formula to a total in the bowl, g. A recipe wholly in per cent of the total is written out in grams.
 */
export function scaleToTotal(lines: readonly FormulaLine[], totalG: number): Scaled {
  const solved = solve(lines);
  if (solved.totalG === null && totalG > 0 && Number.isFinite(totalG) && isWholeInPercent(lines))
    return { ok: true, factor: 1, lines: lines.map((line) => toGrams(line, totalG)), clearedWeights: 0 };
  return scaleTo(lines, totalG, solved.totalG);
}

/** Scale a formula to a meat block, g. */
export function scaleToMeatBlock(lines: readonly FormulaLine[], meatBlockG: number): Scaled {
  return scaleTo(lines, meatBlockG, solve(lines).meatBlockG);
}

/** What a set of moulds takes and what is lost on the way to it. Masses in g. */
export interface FillNeed {
  /** Net fill of all moulds together. */
  readonly fillG: number;
  readonly testPoachG: number;
  /** Left on bowl and filler, fraction of the mix. */
  readonly residueFraction: number;
}

/**
 * Mix that fills the moulds: fill ÷ (1 − residue) + test poach. Null for input that is no mass or fraction.
 * Derived: losses one after the other.
 */
export function mixForFillG({ fillG, testPoachG, residueFraction }: FillNeed): number | null {
  if (!(fillG > 0) || !(testPoachG >= 0) || !(residueFraction >= 0) || residueFraction >= 1) return null;
  return fillG / (1 - residueFraction) + testPoachG;
}

/** Scale a formula so that it fills the moulds. */
export function scaleToFill(lines: readonly FormulaLine[], need: FillNeed): Scaled {
  const mixG = mixForFillG(need);
  return mixG === null ? { ok: false, problem: 'unusable-factor' } : scaleToTotal(lines, mixG);
}

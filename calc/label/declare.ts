import { fixedText, roundTo } from '../quantities/index.ts';
import type { RoundingBand, RoundingRule, RoundingUnit } from './rounding-rules.ts';

/** A figure as a label declares it. */
export interface DeclaredFigure {
  /** The figure; null where only a phrase is declared. */
  readonly value: number | null;
  /** "Less than" this. With a value of 0 the maker may choose either. */
  readonly lessThan: number | null;
  readonly unit: RoundingUnit;
  /** The figure with its decimals: `9.0`, `10`, `1.00`. Empty for a phrase alone. */
  readonly digits: string;
}

/** Decimals kept while dividing by a step. */
const CLEAN = 4;

function bandOf(value: number, bands: readonly RoundingBand[]): RoundingBand | undefined {
  return bands.find(({ to, toIncluded }) => to === null || value < to || (toIncluded && value === to));
}

function decimalsOf(step: number): number {
  return (String(step).split('.')[1] ?? '').length;
}

/**
 * Declares a value by a rounding rule; a half goes up. The band is that of the exact value: what rounds up to the
 * edge of the next band is printed at that edge (9.95 g is 10 g, 0.995 g of salt is 1.00 g).
 *
 * @param value in the unit of the rule, not below none
 * @returns null for input that is no amount
 */
export function declareFigure(value: number, rule: RoundingRule): DeclaredFigure | null {
  if (!(value >= 0) || !Number.isFinite(value)) return null;
  const band = bandOf(value, rule.bands);
  if (!band) return null;
  const { unit } = rule;
  const how = band.declared;
  if (how.kind === 'zero') return { value: 0, lessThan: null, unit, digits: '0' };
  if (how.kind === 'words')
    return {
      value: how.orZero ? 0 : null,
      lessThan: how.lessThan,
      unit,
      digits: how.orZero ? '0' : '',
    };
  const rounded = roundTo(roundTo(value / how.step, 0) * how.step, CLEAN);
  const decimals = decimalsOf(how.step);
  const atEdge = decimals === 1 && band.to !== null && rounded >= band.to;
  return { value: rounded, lessThan: null, unit, digits: fixedText(rounded, atEdge ? 0 : decimals) };
}

/** Whether two declarations print the same. */
export function sameFigure(a: DeclaredFigure | null, b: DeclaredFigure | null): boolean {
  return a !== null && b !== null && a.value === b.value && a.lessThan === b.lessThan;
}

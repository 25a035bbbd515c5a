import type { Mark, SourceId } from '../sources/index.ts';

/**
 * A curing salt as packs in the trade declare it. For reading only: no worksheet takes a strength from
 * here, a person reads it off the pack.
 */
export interface CuringSaltStrength {
  readonly id: string;
  readonly name: string;
  /** Sodium nitrite, % of the salt; two figures where packs differ. */
  readonly nitritePercent: readonly [low: number, high: number];
  /** Sodium nitrate, %; 0 for none. */
  readonly nitratePercent: number;
  readonly source: SourceId;
  readonly mark: Mark;
}

const row = (
  id: string,
  name: string,
  nitritePercent: readonly [number, number],
  nitratePercent = 0,
): CuringSaltStrength => ({
  id,
  name,
  nitritePercent,
  nitratePercent,
  source: 'trade-curing-salts',
  mark: 'memory',
});

/** Strengths met on packs, weakest first. They differ more than twentyfold, and look alike. */
export const CURING_SALT_STRENGTHS: readonly CuringSaltStrength[] = [
  row('nitrite-salt-low', 'Nitrited salt, Europe, used as the whole salt', [0.4, 0.5]),
  row('nitrite-salt-high', 'Nitrited salt, stronger grade', [0.6, 0.6]),
  row('complete-cure', 'Complete cure with sugar and spice', [0.75, 0.75]),
  row('nitrite-salt-strong', 'Nitrited salt, strongest sold as salt', [0.8, 1]),
  row('one-to-sixteen', 'Pink curing salt, one part nitrite to sixteen of salt', [5.88, 5.88]),
  row('concentrate-6', 'Curing salt concentrate', [6, 6]),
  row('pink-one', 'Pink curing salt without nitrate (number 1)', [6.25, 6.25]),
  row('pink-two', 'Pink curing salt with nitrate (number 2)', [6.25, 6.25], 4),
  row('concentrate-11', 'Strong concentrate, Scandinavia; no worksheet takes it', [11, 11]),
];

/** Sodium nitrite that a gram of curing salt brings to a kilogram, mg/kg: per cent × 10. Derived. */
export function nitriteOfAGramPerKg(nitritePercent: number): number {
  return nitritePercent * 10;
}

import type { Unit } from './entry.ts';
import { UNITS } from './units.ts';

/** Decimal digits that name every double apart from its neighbours. */
const MAX_DIGITS = 17;

/**
 * A value in `unit` to the base unit of its kind (g, mm, mL, °C, kPa, min, fraction).
 * @example toBase(1, 'lb') // 453.59237
 */
export function toBase(value: number, unit: Unit): number {
  const { num, den, zero } = UNITS[unit];
  return ((value - zero) * num) / den;
}

/**
 * A base value to `unit`: the shortest decimal number that `toBase` brings back to exactly this base value.
 * So whatever a person can type with up to 15 digits survives the way there and back unchanged, and no
 * 12.499999999999998 appears. NaN and infinities pass through.
 * @example fromBase(453.59237, 'lb') // 1
 */
export function fromBase(base: number, unit: Unit): number {
  const { num, den, zero } = UNITS[unit];
  if (num === den && zero === 0) return base;
  const near = (base * den) / num + zero;
  if (!Number.isFinite(near)) return near;
  for (let digits = 1; digits <= MAX_DIGITS; digits++) {
    const candidate = Number(near.toPrecision(digits));
    if (toBase(candidate, unit) === base) return candidate;
  }
  return near;
}

/**
 * Convert between two units of one kind.
 * @throws RangeError when the units belong to different kinds (a programmer's error).
 * @example convert(145, 'F', 'C') // 62.77777777777778
 */
export function convert(value: number, from: Unit, to: Unit): number {
  if (UNITS[from].kind !== UNITS[to].kind) throw new RangeError(`${from} and ${to} measure different things`);
  return from === to ? value : fromBase(toBase(value, from), to);
}

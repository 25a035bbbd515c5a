/** `up` is toward +∞, `down` toward −∞, `nearest` sends a half away from zero. */
export type Rounding = 'nearest' | 'up' | 'down';

/**
 * Digits kept before rounding. Binary arithmetic leaves its noise from the 15th digit on, and a chain of sums
 * brings it a little forward; nothing in a kitchen is known to 12 digits, so what lies beyond is noise.
 */
const TRUSTED_DIGITS = 12;

interface Decimal {
  readonly negative: boolean;
  /** All digits as one whole number. */
  readonly digits: bigint;
  /** How many of the digits stand right of the point. */
  readonly scale: number;
}

function toDecimal(value: number): Decimal {
  const [mantissa = '0', exponent = '0'] = Math.abs(value)
    .toExponential(TRUSTED_DIGITS - 1)
    .split('e');
  const [whole = '0', part = ''] = mantissa.split('.');
  const scale = part.length - Number(exponent);
  const digits = BigInt(whole + part);
  return scale >= 0
    ? { negative: value < 0, digits, scale }
    : { negative: value < 0, digits: digits * 10n ** BigInt(-scale), scale: 0 };
}

/** The digits of |value| rounded to `decimals` places, as a whole number of the last place. */
function roundedDigits(decimal: Decimal, decimals: number, rounding: Rounding): bigint {
  const shift = decimal.scale - decimals;
  if (shift <= 0) return decimal.digits * 10n ** BigInt(-shift);
  const step = 10n ** BigInt(shift);
  const floor = decimal.digits / step;
  const rest = decimal.digits % step;
  if (rest === 0n) return floor;
  if (rounding === 'nearest') return rest * 2n >= step ? floor + 1n : floor;
  const away = (rounding === 'up') !== decimal.negative;
  return away ? floor + 1n : floor;
}

/**
 * Write a number with a fixed count of decimals, rounded as decimal digits are rounded on paper:
 * 2.05 / 1000 * 100 to two places is 0.21, though the nearest binary number lies a hair under 0.205.
 * Minus is a true minus sign, and there is no minus zero. A value that is not finite gives ''.
 * @param decimals 0–20
 */
export function fixedText(value: number, decimals: number, rounding: Rounding = 'nearest'): string {
  if (!Number.isFinite(value)) return '';
  const decimal = toDecimal(value);
  const digits = roundedDigits(decimal, decimals, rounding);
  const padded = digits.toString().padStart(decimals + 1, '0');
  const whole = padded.slice(0, padded.length - decimals);
  const text = decimals === 0 ? whole : `${whole}.${padded.slice(-decimals)}`;
  return decimal.negative && digits !== 0n ? `−${text}` : text;
}

/** The number that `fixedText` writes. NaN and infinities pass through. */
export function roundTo(value: number, decimals: number, rounding: Rounding = 'nearest'): number {
  if (!Number.isFinite(value)) return value;
  return Number(fixedText(value, decimals, rounding).replace('−', '-'));
}

/** Decimals that show `value` with so many significant digits (never fewer than none). */
export function decimalsForSignificant(value: number, significant: number): number {
  if (value === 0 || !Number.isFinite(value)) return Math.max(0, significant - 1);
  const exponent = Number(
    Math.abs(value)
      .toExponential(Math.max(0, significant - 1))
      .split('e')[1],
  );
  return Math.max(0, significant - 1 - exponent);
}

/** The shortest decimal text of a number, never with an exponent. */
export function plainText(value: number): string {
  const text = String(Math.abs(value));
  const sign = value < 0 ? '−' : '';
  const [mantissa = '0', exponent] = text.split('e');
  if (exponent === undefined) return sign + text;
  const [whole = '0', part = ''] = mantissa.split('.');
  const shift = Number(exponent);
  if (shift < 0) return `${sign}0.${'0'.repeat(-shift - 1)}${whole}${part}`;
  return sign + whole + part.padEnd(shift, '0');
}

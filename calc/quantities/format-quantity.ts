import { fromBase } from './convert.ts';
import type { Unit } from './entry.ts';
import { decimalsForSignificant, fixedText, plainText, type Rounding } from './round.ts';
import { BASE_UNITS, type QuantityKind, UNITS, unitLabel } from './units.ts';

export interface FormatOptions {
  /** Unit to show; the kind's base unit where left out. */
  readonly unit?: Unit;
  /** Fixed count of decimals. */
  readonly decimals?: number;
  /** Significant digits, instead of decimals. With neither, every digit is written. */
  readonly significant?: number;
  /** `up` toward +∞, `down` toward −∞. */
  readonly rounding?: Rounding;
  /** Write the unit after a no-break space. */
  readonly withUnit?: boolean;
  /** Part whole numbers of five digits and more with a narrow no-break space. */
  readonly grouped?: boolean;
}

const NO_BREAK_SPACE = '\u00A0';
const NARROW_NO_BREAK_SPACE = '\u202F';

function groupThousands(text: string): string {
  const [whole = '', part] = text.split('.');
  if (whole.replace('−', '').length < 5) return text;
  const grouped = whole.replaceAll(/\B(?=(?:\d{3})+$)/g, NARROW_NO_BREAK_SPACE);
  return part === undefined ? grouped : `${grouped}.${part}`;
}

/**
 * Write a base value in the user's unit. With neither decimals nor significant digits the text reads back to
 * exactly the same value. Rounding is that of decimal digits (`fixedText`). Not finite gives ''.
 * @throws RangeError when the unit is of another kind (a programmer's error)
 * @example formatQuantity('mass', 907.18474, { unit: 'lb', withUnit: true }) // '2 lb'
 */
export function formatQuantity(kind: QuantityKind, value: number, options: FormatOptions = {}): string {
  const { unit = BASE_UNITS[kind], decimals, significant, rounding = 'nearest' } = options;
  if (UNITS[unit].kind !== kind) throw new RangeError(`${unit} does not measure ${kind}`);
  if (!Number.isFinite(value)) return '';
  const shown = fromBase(value, unit);
  const places =
    decimals ?? (significant === undefined ? undefined : decimalsForSignificant(shown, significant));
  const text = places === undefined ? plainText(shown) : fixedText(shown, places, rounding);
  const number = options.grouped ? groupThousands(text) : text;
  const label = unitLabel(unit);
  return options.withUnit && label !== '' ? `${number}${NO_BREAK_SPACE}${label}` : number;
}

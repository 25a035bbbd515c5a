import { toBase } from './convert.ts';
import type { Unit } from './entry.ts';
import { scanNumber } from './parse-number.ts';
import { type Range, withinRange } from './range.ts';
import { type Issue, issue, ok, type Result } from './result.ts';
import { spelledUnit } from './spellings.ts';
import { compensatedSum } from './sum.ts';
import { type QuantityKind, UNITS, unitLabel, unitsOf } from './units.ts';

/** Longer texts are not numbers; the cut also bounds the work of every pattern below. */
export const MAX_LENGTH = 64;

export interface ParseOptions {
  /** Curing salt: grams and nothing else. */
  readonly gramsOnly?: boolean;
  /** Limits of this field in base units; the kind's physical range where left out. */
  readonly range?: Range;
}

/** What was read from a text. */
export interface Quantity {
  /** In the base unit of its kind. */
  readonly value: number;
  /** The unit it was written in (the first, for "2 lb 3 oz"). */
  readonly unit: Unit;
  /** Read for sure, yet worth showing back: "1.250" is one and a quarter here, a thousand elsewhere. */
  readonly notice: 'point-thousand' | null;
}

interface Term {
  readonly value: number;
  readonly unit: Unit | null;
  readonly pointThousand: boolean;
}

const SIGN = /^([+\-–])\s*/;
/** A unit word ends at a space, a digit, a sign or the end of the text. "cm3" and "g/mL" are whole words. */
const UNIT_WORD =
  /^(?:degrees? ?[cf]\b|deg ?[cf]\b|[°º˚] ?[cf]\b|per ?cent\b|(?:g\/)?cm3\b|[^\d\s.,:+\-–]+\.?)/i;
/** A degree with no letter leaves the scale to the field. */
const BARE_DEGREE = /^(?:[°º˚]|deg\.?|degrees?)$/i;
const DEGREES: readonly QuantityKind[] = ['temperature', 'temperature-difference'];
/** In a compound of hours, minutes and seconds the last number may go without its unit. */
const NEXT_SMALLER: Readonly<Partial<Record<Unit, Unit>>> = { h: 'min', min: 's' };

/**
 * A number as loggers write them, which can be read in one way only. Three places after the point are left to the long
 * way: they may be a thousand.
 */
const PLAIN = /^-?\d{1,7}(?:\.(?:\d{1,2}|\d{4,9}))?$/;

/** One kind of space, minus, slash and apostrophe, so that the patterns need know only one. */
function tidy(text: string): string {
  return text
    .replaceAll(/[\s\u00A0\u2000-\u200A\u202F\u205F\u3000]+/g, ' ')
    .replaceAll(/[\u200B-\u200F\u2060\uFEFF]/g, '')
    .replaceAll(/[\u2212\uFE63\uFF0D]/g, '-')
    .replaceAll(/[\u2044\u2215]/g, '/')
    .replaceAll(/[\u2019\u02BC]/g, "'")
    .trim();
}

function unitIssue(word: string, kind: QuantityKind): { ok: false; issue: Issue } | Unit {
  const spelled = spelledUnit(word, kind);
  const wanted = unitsOf(kind).map(unitLabel).filter(Boolean).join(', ');
  if (spelled.unit === null)
    return issue(spelled.spoon ? 'spoon-or-cup' : 'unknown-unit', { found: word, wanted });
  return spelled.kind === kind ? spelled.unit : issue('wrong-kind', { found: word, wanted });
}

/** "1:30" is hours and minutes, "1:30:15" with seconds. Minutes. */
function readClock(text: string): Result<number> | null {
  const clock = /^(\d{1,4}):(\d{1,2})(?::(\d{1,2}))?(?: ?h(?:rs?|ours?)?)?$/i.exec(text);
  if (!clock) return text.includes(':') ? issue('bad-clock', { found: text }) : null;
  const [, hours = '0', minutes = '0', seconds = '0'] = clock;
  if (Number(minutes) > 59 || Number(seconds) > 59) return issue('bad-clock', { found: text });
  return ok(Number(hours) * 60 + Number(minutes) + Number(seconds) / 60);
}

/** Split a text into numbers with their units. */
function readTerms(text: string, kind: QuantityKind): Result<Term[]> {
  const terms: Term[] = [];
  let rest = text;
  while (rest !== '') {
    if (terms.length > 0 && /^(?:-|–|to\b|\.\.)/.test(rest)) return issue('number-range', { found: text });
    const number = scanNumber(rest);
    if (!number.ok)
      return number.issue.code === 'not-a-number' ? issue('not-a-number', { found: text }) : number;
    rest = rest.slice(number.value.length).trimStart();
    const word = UNIT_WORD.exec(rest)?.[0] ?? '';
    if (word !== 'to') rest = rest.slice(word.length).trimStart();
    const { value, pointThousand } = number.value;
    if (word === '' || word === 'to' || (DEGREES.includes(kind) && BARE_DEGREE.test(word))) {
      terms.push({ value, unit: null, pointThousand });
      continue;
    }
    const unit = unitIssue(word, kind);
    if (typeof unit !== 'string') return unit;
    terms.push({ value, unit, pointThousand });
  }
  return ok(terms);
}

/** Add up "2 lb 3 oz". Units must fall from term to term and a smaller part must not fill a larger unit. */
function addTerms(terms: readonly Term[], fallback: Unit, found: string): Result<number> {
  const [first] = terms;
  if (!first) return issue('empty');
  if (terms.length === 1) return ok(toBase(first.value, first.unit ?? fallback));
  const bases: number[] = [];
  let previous: Unit | null = null;
  for (const [index, term] of terms.entries()) {
    const last = index === terms.length - 1;
    const unit: Unit | null =
      term.unit ?? (previous !== null && last ? (NEXT_SMALLER[previous] ?? null) : null);
    if (unit === null) return issue('missing-unit', { found });
    const base = toBase(term.value, unit);
    if (previous !== null && (base >= toBase(1, previous) || toBase(1, unit) >= toBase(1, previous)))
      return issue('bad-compound', { found });
    bases.push(base);
    previous = unit;
  }
  return ok(compensatedSum(bases));
}

/**
 * Read what a person typed: "1 1/2 lb", "1½", "350 °F", "0,5 kg", "1 200 g", "2 lb 3 oz", "1h 30", "1:30".
 *
 * Decimal point or comma; groups of three parted by spaces, apostrophes, or by the other sign ("1.234,5").
 * A lone comma before exactly three digits is sent back as ambiguous. Exponents, ranges, other scripts' digits
 * and units of another kind are refused by code; nothing typed is thrown away silently.
 *
 * @param kind what the field measures
 * @param fallbackUnit unit of a number that names none; must be of the same kind
 * @returns value in the base unit, or one issue; `empty` for blank text
 * @example parseQuantity('mass', '1 1/2 lb', 'g') // value 680.388555 g, unit 'lb'
 */
export function parseQuantity(
  kind: QuantityKind,
  text: string,
  fallbackUnit: Unit,
  options: ParseOptions = {},
): Result<Quantity> {
  if (text.length > MAX_LENGTH) return issue('too-long', { max: MAX_LENGTH });
  // A log holds a hundred thousand of these, and each is read again with every edit.
  if (PLAIN.test(text) && !options.gramsOnly && UNITS[fallbackUnit].kind === kind)
    return finish(kind, toBase(Number(text), fallbackUnit), fallbackUnit, false, options);
  const whole = tidy(text);
  if (whole === '') return issue('empty');
  if (UNITS[fallbackUnit].kind !== kind)
    return issue('wrong-kind', { found: whole, wanted: unitLabel(fallbackUnit) });
  if (/[\p{Nd}--[0-9]]/v.test(whole)) return issue('foreign-digits', { found: whole });

  const sign = SIGN.exec(whole);
  const unsigned = sign ? whole.slice(sign[0].length) : whole;
  const clock = kind === 'time' ? readClock(unsigned) : null;
  if (clock && !clock.ok) return clock;
  const terms = clock ? ok<Term[]>([]) : readTerms(unsigned, kind);
  if (!terms.ok) return terms;
  const unit = clock ? 'h' : (terms.value[0]?.unit ?? fallbackUnit);
  if (options.gramsOnly && terms.value.some((term) => (term.unit ?? fallbackUnit) !== 'g'))
    return issue('grams-only', { found: whole });
  const negative = sign !== null && sign[1] !== '+';
  const [first] = terms.value;
  if (negative && terms.value.length === 1 && first) {
    // A reading below zero must be turned round before Fahrenheit's zero is taken off.
    const below = toBase(-first.value, unit);
    return finish(kind, below, unit, first.pointThousand, options);
  }
  const sum = clock ?? addTerms(terms.value, fallbackUnit, whole);
  if (!sum.ok) return sum;
  const pointThousand = terms.value.some((term) => term.pointThousand);
  return finish(kind, negative ? -sum.value : sum.value, unit, pointThousand, options);
}

function finish(
  kind: QuantityKind,
  value: number,
  unit: Unit,
  pointThousand: boolean,
  options: ParseOptions,
): Result<Quantity> {
  const inRange = withinRange(value, unit, options.range);
  if (!inRange.ok) return inRange;
  if (kind === 'count' && !Number.isInteger(value)) return issue('not-whole');
  const thousandPossible = pointThousand && withinRange(value * 1000, unit, options.range).ok;
  return ok({ value: value === 0 ? 0 : value, unit, notice: thousandPossible ? 'point-thousand' : null });
}

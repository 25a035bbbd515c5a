import { issue, ok, type Result } from './result.ts';

/** A number read at the start of a text, and how many characters it took. */
export interface ScannedNumber {
  readonly value: number;
  readonly length: number;
  /** Written with a point and exactly three digits: read as a decimal, but a thousand in some countries. */
  readonly pointThousand: boolean;
}

const VULGAR: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅕': 1 / 5,
  '⅖': 2 / 5,
  '⅗': 3 / 5,
  '⅘': 4 / 5,
  '⅙': 1 / 6,
  '⅚': 5 / 6,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
  '⅒': 1 / 10,
};
const VULGAR_CLASS = `[${Object.keys(VULGAR).join('')}]`;

const MIXED = /^(\d+)(?: +|-)(\d+)\/(\d+)(?![\d.,/])/;
const FRACTION = /^(\d+)\/(\d+)(?![\d.,/])/;
const MIXED_VULGAR = new RegExp(`^(\\d+) ?(${VULGAR_CLASS})`);
const VULGAR_ONLY = new RegExp(`^(${VULGAR_CLASS})`);
/** A run of digits and separators; a space belongs to it only before exactly three digits. */
const DECIMAL = /^(?:\d|[.,]\d)[\d.,']*(?: \d{3}(?!\d)[\d.,']*)*/;

function fraction(
  whole: number,
  top: string,
  bottom: string,
  length: number,
  found: string,
): Result<ScannedNumber> {
  const numerator = Number(top);
  const denominator = Number(bottom);
  if (denominator === 0) return issue('zero-denominator', { found });
  // "11/2" is as likely a lost space in "1 1/2" as it is five and a half.
  if (numerator >= denominator) return issue('improper-fraction', { found });
  return ok({ value: whole + numerator / denominator, length, pointThousand: false });
}

/**
 * Read digits with separators as one number. A point is the decimal sign; a comma is too, unless exactly three
 * digits follow it, when "1,234" may be either and is sent back. With both signs the last is the decimal one.
 */
function readSeparated(run: string): Result<{ value: number; pointThousand: boolean }> {
  const text = run.replace(/[.,]$/, '');
  const points = text.split('.').length - 1;
  const commas = text.split(',').length - 1;
  const spaced = /[ ']/.test(text);
  const sure = (plain: string) => ok({ value: Number(plain), pointThousand: false });
  const bad = issue('bad-grouping', { found: run.trim() });

  if (points > 0 && commas > 0) {
    const decimalSign = text.lastIndexOf('.') > text.lastIndexOf(',') ? '.' : ',';
    const groupSign = decimalSign === '.' ? ',' : '.';
    const [whole = '', part = '', extra] = text.split(decimalSign);
    const grouped = new RegExp(`^\\d{1,3}(?:\\${groupSign}\\d{3})+$`);
    if (extra !== undefined || !grouped.test(whole) || !/^\d+$/.test(part)) return bad;
    return sure(`${whole.replaceAll(groupSign, '')}.${part}`);
  }
  if (spaced) {
    const grouped = /^(\d{1,3}(?:[ ']\d{3})+)(?:[.,](\d+))?$/.exec(text);
    return grouped ? sure(`${grouped[1]?.replaceAll(/[ ']/g, '')}.${grouped[2] ?? '0'}`) : bad;
  }
  if (points > 1 || commas > 1) {
    return /^\d{1,3}(?:\.\d{3})+$|^\d{1,3}(?:,\d{3})+$/.test(text) ? sure(text.replaceAll(/[.,]/g, '')) : bad;
  }
  const threeAfter = /^([1-9]\d{0,2})[.,](\d{3})$/.exec(text);
  if (commas === 1 && threeAfter) {
    const [, whole = '', part = ''] = threeAfter;
    return issue('ambiguous-comma', { found: text, thousands: whole + part, decimal: `${whole}.${part}` });
  }
  return ok({ value: Number(text.replace(',', '.')), pointThousand: points === 1 && threeAfter !== null });
}

/**
 * Read one unsigned number at the start of `text`: decimal, grouped, fraction or mixed. Expects spaces already
 * folded to plain ones and every fraction slash to `/`.
 */
export function scanNumber(text: string): Result<ScannedNumber> {
  const mixed = MIXED.exec(text);
  if (mixed) return fraction(Number(mixed[1]), mixed[2] ?? '', mixed[3] ?? '', mixed[0].length, mixed[0]);
  const simple = FRACTION.exec(text);
  if (simple) return fraction(0, simple[1] ?? '', simple[2] ?? '', simple[0].length, simple[0]);
  const vulgar = MIXED_VULGAR.exec(text);
  if (vulgar) {
    const value = Number(vulgar[1]) + (VULGAR[vulgar[2] ?? ''] ?? 0);
    return ok({ value, length: vulgar[0].length, pointThousand: false });
  }
  const alone = VULGAR_ONLY.exec(text);
  if (alone) return ok({ value: VULGAR[alone[0]] ?? 0, length: alone[0].length, pointThousand: false });
  const run = DECIMAL.exec(text);
  if (!run) return issue('not-a-number', { found: text });
  if (/^[eE][+-]?\d/.test(text.slice(run[0].length))) return issue('exponent', { found: text });
  const read = readSeparated(run[0]);
  return read.ok ? ok({ ...read.value, length: run[0].length }) : read;
}

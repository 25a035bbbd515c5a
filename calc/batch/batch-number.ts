/** A number by date and letter: 20260505-A, the day's second is B. */
export const DEFAULT_NUMBER_SCHEME = '{YYYY}{MM}{DD}-{A}';

/** What a part of a scheme in braces stands for. */
const DATE_PARTS = ['YYYY', 'YY', 'MM', 'DD', 'DDD'] as const;
type DatePart = (typeof DATE_PARTS)[number];
const COUNTER = /^(?:A|N{1,6})$/;

/** What is wrong with a scheme, or null. */
export type SchemeProblem = 'no-counter' | 'two-counters' | 'unknown-part' | 'open-brace' | 'too-long';

const LONGEST_SCHEME = 60;
const PART = /\{([^{}]*)\}/g;

/** Reads a kitchen's scheme: plain text with parts in braces, one of them counting. */
export function schemeProblem(scheme: string): { problem: SchemeProblem; part: string } | null {
  if (scheme.length > LONGEST_SCHEME) return { problem: 'too-long', part: '' };
  const parts = [...scheme.matchAll(PART)].map(([, part = '']) => part);
  const unknown = parts.find((part) => !COUNTER.test(part) && !DATE_PARTS.some((each) => each === part));
  if (unknown !== undefined) return { problem: 'unknown-part', part: unknown };
  if (/[{}]/.test(scheme.replaceAll(PART, ''))) return { problem: 'open-brace', part: '' };
  const counters = parts.filter((part) => COUNTER.test(part)).length;
  if (counters === 0) return { problem: 'no-counter', part: '' };
  return counters > 1 ? { problem: 'two-counters', part: '' } : null;
}

/** 1 → A, 26 → Z, 27 → AA. */
function letters(count: number): string {
  let rest = count;
  let text = '';
  while (rest > 0) {
    text = String.fromCharCode(65 + ((rest - 1) % 26)) + text;
    rest = Math.floor((rest - 1) / 26);
  }
  return text;
}

/** A → 1, AA → 27. */
function countOfLetters(text: string): number {
  return [...text].reduce((sum, letter) => sum * 26 + (letter.charCodeAt(0) - 64), 0);
}

function datePart(part: DatePart, date: string): string {
  const [year = '', month = '', day = ''] = date.split('-');
  if (part === 'YYYY') return year;
  if (part === 'YY') return year.slice(-2);
  if (part === 'MM') return month;
  if (part === 'DD') return day;
  const nth =
    (Date.UTC(Number(year), Number(month) - 1, Number(day)) - Date.UTC(Number(year), 0, 1)) / 86_400_000;
  return String(nth + 1).padStart(3, '0');
}

/**
 * The next free number of a scheme: one more than the highest that the same day, month or year, whichever the scheme
 * names, has already. A number is never given twice.
 *
 * @param scheme a sound one: `schemeProblem` is null
 * @param date `YYYY-MM-DD`
 * @param taken all numbers in use, archived and deleted ones too
 * @throws RangeError for a scheme that is not sound
 * @example nextBatchNumber('{YYYY}{MM}{DD}-{A}', '2026-05-05', ['20260505-A']) // '20260505-B'
 */
export function nextBatchNumber(scheme: string, date: string, taken: readonly string[]): string {
  if (schemeProblem(scheme)) throw new RangeError(`Not a scheme for batch numbers: ${scheme}`);
  const dated = scheme.replaceAll(PART, (whole, part: string) =>
    COUNTER.test(part) ? whole : datePart(part as DatePart, date),
  );
  const [before = '', counter = '', after = ''] = dated.split(/\{(A|N+)\}/);
  const counts = taken.map((number) => {
    const text = number.trim();
    if (text.length < before.length + after.length + 1 || !text.startsWith(before) || !text.endsWith(after))
      return 0;
    const middle = text.slice(before.length, text.length - after.length);
    if (counter === 'A') return /^[A-Z]{1,4}$/.test(middle) ? countOfLetters(middle) : 0;
    return /^\d{1,9}$/.test(middle) ? Number(middle) : 0;
  });
  const next = Math.max(0, ...counts) + 1;
  return `${before}${counter === 'A' ? letters(next) : String(next).padStart(counter.length, '0')}${after}`;
}

/** What can be wrong with a typed quantity. Each code has one wording for the screen. */
export type IssueCode =
  | 'empty'
  | 'too-long'
  | 'not-a-number'
  | 'foreign-digits'
  | 'exponent'
  | 'ambiguous-comma'
  | 'bad-grouping'
  | 'number-range'
  | 'improper-fraction'
  | 'zero-denominator'
  | 'unknown-unit'
  | 'wrong-kind'
  | 'spoon-or-cup'
  | 'missing-unit'
  | 'bad-compound'
  | 'bad-clock'
  | 'grams-only'
  | 'negative'
  | 'not-whole'
  | 'below-range'
  | 'above-range';

/** Words and numbers an issue's sentence needs, already in the user's own units. */
export type IssueParams = Readonly<Record<string, string | number>>;

/** Why a typed text gives no quantity. Data only; the words live with the screen. */
export interface Issue {
  readonly code: IssueCode;
  readonly params: IssueParams;
}

/** A value, or the reason there is none. `calc` returns these for anything a person typed and never throws. */
export type Result<T, E = Issue> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly issue: E };

/** Wrap a value. */
export function ok<T>(value: T): { readonly ok: true; readonly value: T } {
  return { ok: true, value };
}

/** Wrap an issue of any type. */
export function fail<E>(issue: E): { readonly ok: false; readonly issue: E } {
  return { ok: false, issue };
}

/** Wrap a quantity issue by its code. */
export function issue(
  code: IssueCode,
  params: IssueParams = {},
): { readonly ok: false; readonly issue: Issue } {
  return { ok: false, issue: { code, params } };
}

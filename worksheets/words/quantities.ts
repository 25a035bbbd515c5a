import {
  type Entry,
  formatQuantity,
  type Issue,
  type IssueCode,
  type IssueParams,
  type QuantityKind,
  readEntry,
} from '@larderwright/calc/quantities';
import type { Words } from './wording.ts';

/** A limit with its unit, as the person sees it. */
function limit(params: IssueParams): string {
  return [params.limit, params.unit].filter((part) => part !== undefined && part !== '').join(' ');
}

/** What to say when a typed text gives no number: what is wrong, then what to write. */
export const quantityWords = {
  empty: () => ({ title: 'Nothing is written here yet.', body: '' }),
  'too-long': (p) => ({
    title: `Too long for a number (more than ${p.max} characters).`,
    body: 'Write the number and its unit only.',
  }),
  'not-a-number': (p) => ({
    title: `"${p.found}" is not a number.`,
    body: 'Write one number, such as 12.5 or 1 1/2.',
  }),
  'foreign-digits': (p) => ({
    title: `"${p.found}" uses other digits.`,
    body: 'Write it with the digits 0 to 9.',
  }),
  exponent: (p) => ({ title: `"${p.found}" has an exponent.`, body: 'Write the number out in full.' }),
  'ambiguous-comma': (p) => ({
    title: `${p.thousands} or ${p.decimal}?`,
    body: `"${p.found}" can be read both ways. Write ${p.thousands} or ${p.decimal}.`,
  }),
  'bad-grouping': (p) => ({
    title: `"${p.found}" has points, commas or spaces where a number has none.`,
    body: 'Write it plainly, such as 1200 or 12.5.',
  }),
  'number-range': (p) => ({ title: `"${p.found}" is a range.`, body: 'Write one number.' }),
  'improper-fraction': (p) => ({
    title: `"${p.found}" can be read two ways.`,
    body: 'Put a space after the whole number (1 1/2), or write it as a decimal.',
  }),
  'zero-denominator': (p) => ({ title: `"${p.found}" divides by zero.`, body: 'Write the fraction again.' }),
  'unknown-unit': (p) => ({ title: `"${p.found}" is not a unit known here.`, body: `Use ${p.wanted}.` }),
  'wrong-kind': (p) => ({
    title: `"${p.found}" does not fit this field.`,
    body: p.wanted ? `This field takes ${p.wanted}.` : 'This field takes a plain count.',
  }),
  'spoon-or-cup': () => ({
    title: 'Spoons and cups differ from hand to hand.',
    body: 'Weigh it and write the weight.',
  }),
  'missing-unit': (p) => ({
    title: `"${p.found}" has a number without a unit.`,
    body: 'Write a unit after each number.',
  }),
  'bad-compound': (p) => ({
    title: `The parts of "${p.found}" do not add up to one quantity.`,
    body: 'Write the larger unit first and keep the smaller part under one of it, such as 2 lb 3 oz.',
  }),
  'bad-clock': (p) => ({
    title: `"${p.found}" is not a length of time.`,
    body: 'Write hours:minutes, such as 1:30.',
  }),
  'grams-only': (p) => ({
    title: `Curing salt is weighed in grams only; "${p.found}" is not taken.`,
    body: 'Weigh it on a gram scale and write the grams.',
  }),
  negative: () => ({ title: 'This cannot be less than zero.', body: '' }),
  'not-whole': () => ({ title: 'Only whole numbers here.', body: '' }),
  'below-range': (p) => ({
    title: `Less than ${limit(p)} cannot be right here.`,
    body: 'Check the number and its unit.',
  }),
  'above-range': (p) => ({
    title: `More than ${limit(p)} cannot be right here.`,
    body: 'Check the number and its unit.',
  }),
} satisfies Words<IssueCode>;

/** An issue as one line for the field. */
export function issueWords(issue: Issue): string {
  const { title, body } = quantityWords[issue.code](issue.params);
  return body === '' ? title : `${title} ${body}`;
}

/** Texts that can be read in one way only need no reading back. */
const PLAIN = /^\s*\d+(?:\.\d+)?\s*$/;

/**
 * What was understood, in the field's own unit, wherever the text could be read in another way.
 * @returns undefined for a plain number
 */
export function readBackWords(kind: QuantityKind, entry: Entry, value: number): string | undefined {
  const reading = readEntry(kind, entry);
  const doubtful = reading.state === 'ok' && reading.notice === 'point-thousand';
  if (PLAIN.test(entry.text) && !doubtful) return undefined;
  const shown = formatQuantity(kind, value, { unit: entry.unit, significant: 6, withUnit: true });
  const trimmed = shown.replace(/(\.\d*?)0+(?=\D|$)/, '$1').replace(/\.(?=\D|$)/, '');
  const warning = doubtful ? ' The point is read as the decimal sign.' : '';
  return `Read as ${trimmed}.${warning}`;
}

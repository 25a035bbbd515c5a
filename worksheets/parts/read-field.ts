import { type Entry, type ParseOptions, type QuantityKind, readEntry } from '@larderwright/calc/quantities';
import { issueWords, readBackWords } from '../words/quantities.ts';

/** What a number field says about what was typed: why it gives no number, or what was understood. */
export interface FieldSays {
  readonly problem?: string | undefined;
  readonly readBack?: string | undefined;
}

/** Reads a field and puts the outcome in words. */
export function readField(kind: QuantityKind, entry: Entry, options: ParseOptions): FieldSays {
  const read = readEntry(kind, entry, options);
  if (read.state === 'bad') return { problem: issueWords(read.issue) };
  if (read.state === 'ok') return { readBack: readBackWords(kind, entry, read.value) };
  return {};
}

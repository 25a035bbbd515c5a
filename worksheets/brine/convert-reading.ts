import { type BrineScale, saltFromReading } from '@larderwright/calc/brine';
import { enteredEntry, readEntry } from '@larderwright/calc/quantities';
import * as say from '#words/brine/convert-reading.ts';
import { issueWords } from '../words/quantities.ts';

/** A reading understood as a brine, or why it is none. */
export type ConvertedReading =
  | { readonly state: 'blank' }
  | { readonly state: 'bad'; readonly problem: string }
  | { readonly state: 'ok'; readonly saltFraction: number };

/**
 * A reading in any scale of brine as typed.
 *
 * @param text a bare number, or a per cent of salt by weight
 */
export function convertReading(scale: BrineScale, text: string): ConvertedReading {
  const read =
    scale === 'fraction'
      ? readEntry('fraction', enteredEntry(text, '%'))
      : readEntry('ratio', enteredEntry(text, 'ratio'));
  if (read.state === 'blank') return { state: 'blank' };
  if (read.state === 'bad') return { state: 'bad', problem: issueWords(read.issue) };
  const saltFraction = saltFromReading(scale, read.value);
  if (saltFraction === null) return { state: 'bad', problem: say.noSaltBrineReadsScale };
  return { state: 'ok', saltFraction };
}

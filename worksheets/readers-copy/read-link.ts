import type { Batch } from '@larderwright/calc/batch';
import { openShare } from '@larderwright/calc/exchange';
import * as say from '#words/readers-copy/read-link.ts';
import { shareProblemWords } from '../words/records.ts';

/** The batch of a share link, or why it is not shown. */
export function readLink(text: string): { batch: Batch } | { words: string } {
  const opened = openShare(text);
  if (opened.ok) return { batch: opened.batch };
  switch (opened.problem) {
    case 'newer-version':
      return {
        words: say.linkHoldsBatchWrittenNewer(opened.version),
      };
    case 'damaged':
      return {
        words: say.whatLinkHoldsNoWholeBatch(opened.path.slice(0, 80)),
      };
    default:
      return { words: shareProblemWords(opened) };
  }
}

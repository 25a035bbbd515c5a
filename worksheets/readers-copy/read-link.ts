import type { Batch } from '@larderwright/calc/batch';
import { openShare } from '@larderwright/calc/exchange';
import { shareProblemWords } from '../words/records.ts';

/** The batch of a share link, or why it is not shown. */
export function readLink(text: string): { batch: Batch } | { words: string } {
  const opened = openShare(text);
  if (opened.ok) return { batch: opened.batch };
  switch (opened.problem) {
    case 'newer-version':
      return {
        words: `This link holds a batch written by a newer version of this site (record version ${opened.version}). Reload the page to get that version.`,
      };
    case 'damaged':
      return {
        words: `What this link holds is no whole batch (at "${opened.path.slice(0, 80)}"). None of it is shown.`,
      };
    default:
      return { words: shareProblemWords(opened) };
  }
}

import type { Verdict } from '@larderwright/calc/findings';
import { SOURCES } from '@larderwright/calc/sources';
import { wordsOf } from '../../words/index.ts';
import type { SheetVerdict } from '../sheet-model.ts';

/** A source as a sheet cites it: the name of the text up to its first comma or colon. */
function shortTitle(title: string): string {
  return title.split(/[,:](?:\s|$)/)[0] ?? title;
}

/** One verdict in print: the word, the reason, the limit's source and whether the limit is from memory. */
export function sheetVerdict(verdict: Verdict): SheetVerdict {
  return {
    state: verdict.state,
    title: wordsOf(verdict.reason, verdict.params).title,
    basis: verdict.basis ? shortTitle(SOURCES[verdict.basis].title) : '',
    fromMemory: verdict.mark === 'memory',
  };
}

export function sheetVerdicts(verdicts: readonly Verdict[]): SheetVerdict[] {
  return verdicts.map(sheetVerdict);
}

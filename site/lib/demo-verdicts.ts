import type { Verdict, VerdictState } from '@larderwright/calc/findings';
import { cookWords } from '../../worksheets/words/cook.ts';
import { coolWords } from '../../worksheets/words/cool.ts';
import { learnWords, wordsOf } from '../../worksheets/words/index.ts';

const STATE_WORDS: Readonly<Record<VerdictState, string>> = {
  pass: 'Pass',
  fail: 'Fail',
  'cannot-tell': 'Cannot tell',
};

learnWords(cookWords);
learnWords(coolWords);

/** A verdict of cook or cooling in one line, in the words the worksheets use. */
export function verdictLine({ state, reason, params, mark }: Verdict): string {
  const known = mark === 'memory' ? ' (The limit is from memory.)' : '';
  return `${STATE_WORDS[state]}: ${wordsOf(reason, params).title}${known}`;
}

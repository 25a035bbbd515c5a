import type { HistoryEntry } from '@larderwright/calc/batch';
import * as say from '#words/batch-sheet/history-words.ts';
import { wallOf } from '../parts/clock-text.ts';
import { fieldWords } from '../words/fields.ts';

/** An entry of the history as a person reads it. */
export function historyWords({ at, by, what, row, from, to }: HistoryEntry) {
  const wall = wallOf(at);
  const blank = (text: string) => (text === '' ? say.blank : text);
  return {
    when: wall ? `${wall.date} ${wall.clock.slice(0, 5)}` : at,
    what: [row, fieldWords(what)].filter(Boolean).join(': '),
    from: blank(from),
    to: blank(to),
    who: by || say.notSaid,
  };
}

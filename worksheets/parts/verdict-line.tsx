import type { Verdict, VerdictState } from '@larderwright/calc/findings';
import { isCheckOverdue, sourceOf } from '@larderwright/calc/sources';
import * as say from '#words/parts/verdict-line.ts';
import { nowIso } from '../state/clock.ts';
import { wordsOf } from '../words/index.ts';

const STATE_WORD: Record<VerdictState, string> = {
  pass: say.pass,
  fail: say.fail,
  'cannot-tell': say.cannotTell,
};

/** One limit judged: the word, the reason, the source, and the mark of a limit that is from memory. */
export function VerdictLine({ verdict }: { verdict: Verdict }) {
  const { title, body } = wordsOf(verdict.reason, verdict.params);
  const source = verdict.basis ? sourceOf(verdict.basis) : undefined;
  return (
    <div class="verdict" data-state={verdict.state}>
      <p class="verdict-line">
        <strong class="verdict-word">{STATE_WORD[verdict.state]}</strong> <span>{title}</span>
      </p>
      {body ? <p class="verdict-body">{body}</p> : null}
      {source ? (
        <p class="verdict-basis">
          {source.title}, {source.edition}
          {verdict.mark === 'memory' ? <strong> {say.limitMemoryCheckCurrentText}</strong> : null}
          {isCheckOverdue(source, nowIso()) ? (
            <strong> {say.checkOverdueLastComparedText(source.reviewed)}</strong>
          ) : null}
        </p>
      ) : verdict.mark === 'common-practice' ? (
        <p class="verdict-basis">{say.commonPracticeNoSource}</p>
      ) : null}
    </div>
  );
}

import type { StateBar } from '@larderwright/calc/batch';
import { wordsOf } from './index.ts';
import { RULE_SUBJECTS } from './rule-subjects.ts';

/** Why a change of state is refused, and what to do about it. */
export function barWords(bar: StateBar): string {
  switch (bar.id) {
    case 'no-such-step':
      return 'The batch cannot go there from the state it is in.';
    case 'nobody-named':
      return 'Say who says so: a name or initials.';
    case 'no-reason':
      return 'Say why, in a few words.';
    case 'no-batch-number':
      return 'The batch has no number. Without one nobody can call it back.';
    case 'no-second-person':
      return 'A release needs a second person. Have them read the record and give their name.';
    case 'second-is-the-first':
      return 'The second person must be another than the one who releases.';
    case 'second-made-it':
      return 'The second person made the batch. Have it checked by somebody else.';
    case 'nothing-judged':
      return 'No limit has been judged, so nothing shows that the batch is safe.';
    case 'verdict': {
      const { state, reason, params } = bar.verdict;
      return `${state === 'fail' ? 'FAIL' : 'CANNOT TELL'}: ${wordsOf(reason, params).title}`;
    }
    case 'stop':
      return `STOP: ${wordsOf(bar.finding.id, bar.finding.params).title}`;
    case 'rule-set-unconfirmed':
      return `Nobody has confirmed the rule set for ${RULE_SUBJECTS[bar.subject]}: it came from this device’s settings.`;
    case 'deviation-open':
      return `Deviation ${bar.number} is not decided, or its decision is to hold or discard.`;
  }
}

import type { Unconfirmed } from '@larderwright/calc/batch';

/** Behind a rule set on paper that only the settings chose. */
export const NOT_CONFIRMED = ', DEFAULT, NOT CONFIRMED';

/** What a rule set is about, in a sentence. */
export const RULE_SUBJECTS: Readonly<Record<Unconfirmed['subject'], string>> = {
  cure: 'nitrite',
  cook: 'cooking',
  cool: 'cooling',
};

import type { CookLossDoubt, ValueRow } from '@larderwright/calc/lethality';
import { fixedText } from '@larderwright/calc/quantities';

/** Log reductions to the tenth, never more than there were; past this much a line means nothing. */
const MOST_LOGS = 12;

export function reductionText(logs: number): string {
  if (logs > MOST_LOGS) return `over ${MOST_LOGS}`;
  return fixedText(Math.max(0, logs), 1, 'down');
}

/** Whose practice asks for a pasteurisation value, and of what. */
export const VALUE_WORDS: Readonly<Record<ValueRow['id'], { name: string; asked: string }>> = {
  'uk-70': { name: 'Tref 70 °C, z 7.5 °C', asked: '2 min: 70 °C for 2 minutes, United Kingdom advice' },
  'fr-70': { name: 'Tref 70 °C, z 10 °C', asked: '40 min: Salmonella, French practice' },
  'uk-90': {
    name: 'Tref 90 °C, z 9 °C below and 10 °C from 90 °C',
    asked: '10 min: vacuum packs kept over ten days, United Kingdom',
  },
  'us-90': {
    name: 'Tref 90 °C, z 7 °C below and 10 °C from 90 °C',
    asked: '10 min: the same, United States fishery guidance',
  },
};

export const COOK_LOSS_DOUBT_WORDS: Readonly<Record<CookLossDoubt, string>> = {
  'no-core': 'no reading yet',
  'not-a-bound-mix': 'the guide is for a minced, bound mix in a covered mould',
  'not-salted': 'the guide is for a salted mix, and its salt is not known or under 1 %',
  'outside-cores': 'the guide covers cores of 65 to 72 °C (149 to 161.6 °F)',
};

/** How each figure beside the verdict is worked out. */
export const afterCookWorkings = {
  reductions:
    'Minutes at the row’s reference temperature along straight lines between readings, the probe’s error taken off, divided by its D. Nothing is counted below the coldest temperature the organism was measured at, and no more above the hottest than at it. Slow heating, salt and fat make bacteria tougher than these lines.',
  values:
    'Sum of 10^((T − Tref) ÷ z) × time along straight lines between readings, the probe’s error taken off. A value is worth nothing without its Tref and z, and values with different z are not to be compared.',
  present:
    'The row of the chosen rule set at or below the newest reading, the probe’s error taken off. Listed rows only: nothing between two rows, nothing above the last.',
  loss: 'Straight line from 2 to 6 % at a core of 65 °C to 4 to 10 % at 72 °C: salted, bound, lidded pork mix. Common practice, no source. Bare unsalted meat loses far more.',
} as const;

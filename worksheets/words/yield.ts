import type { Params } from '@larderwright/calc/findings';
import { fixedText } from '@larderwright/calc/quantities';
import type { YieldFindingId } from '@larderwright/calc/yield';
import { moneyText } from './money.ts';
import type { Words } from './wording.ts';

const percent = (params: Params, key: string) => `${fixedText(Number(params[key]) * 100, 1)} %`;
const grams = (params: Params, key: string) => `${fixedText(Number(params[key]), 0)} g`;
const named = ({ name }: Params) => name || 'Trim test';

/** What a figure is called where an input it needs is missing. */
export const yieldFigureNames: Readonly<Record<string, string>> = {
  'yield.usable': 'the yield',
  'yield.unaccounted': 'what is unaccounted for',
  'yield.cost': 'the cost of the trimmed kilogram',
};

/** The words of every trim test finding. */
export const yieldWords = {
  'yield.unaccounted': (p) => ({
    title: `${named(p)}, trial ${p.trial}: ${percent(p, 'unaccountedFraction')} of the purchase (${grams(p, 'unaccountedG')}) is in no pile.`,
    body: `More than ${percent(p, 'limitFraction')}. Look for drip, scraps on the board, a forgotten pile or a wrong tare.`,
  }),
  'yield.more-than-bought': (p) => ({
    title: `${named(p)}, trial ${p.trial}: the piles weigh ${grams(p, 'unaccountedG')} more than was bought.`,
    body: 'That cannot be. Weigh again, or read the units again.',
  }),
  'yield.one-trial': (p) => ({
    title: `${named(p)}: one trial is not a norm.`,
    body: 'The next piece may trim quite differently. Weigh two more before you buy by it.',
  }),
  'yield.outside-usual': (p) => ({
    title: `${named(p)}: yield ${percent(p, 'yieldFraction')}, usually ${percent(p, 'lowFraction')} to ${percent(p, 'highFraction')}.`,
    body: 'Check the weights. If they stand, ask what was different: the supplier, the cut or the hand.',
  }),
  'yield.usual-reversed': (p) => ({
    title: `${named(p)}: the usual range runs from ${percent(p, 'lowFraction')} down to ${percent(p, 'highFraction')}.`,
    body: 'Swap the two figures.',
  }),
  'yield.credit-over-cost': (p) => ({
    title: `${named(p)}, trial ${p.trial}: the by-products are worth more than the piece cost.`,
    body: `They are credited with ${moneyText(Number(p.creditMoney))}. Check their values per kilogram.`,
  }),
} satisfies Words<YieldFindingId>;

/** How each figure of a trim test is worked out. */
export const yieldWorkings = {
  usable: 'Usable weight divided by the weight bought.',
  unaccounted: 'Weight bought less every pile, divided by the weight bought.',
  cost: 'Price paid less what the by-products are worth, divided by the usable kilograms.',
  costFactor: 'Cost of the usable kilogram divided by the purchase price of a kilogram.',
  mean: 'The yields of the trials added up, divided by their number. Each trial counts the same.',
  sampleSd:
    'How far single trials lie from the mean: the squared differences added up, divided by one less than the trials, and the root of that.',
  purchase: 'Trimmed weight needed divided by the yield.',
} as const;

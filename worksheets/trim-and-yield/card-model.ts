import { type Entry, fixedText } from '@larderwright/calc/quantities';
import type { Spread, YieldSlice, YieldTest, YieldTestResult, YieldValues } from '@larderwright/calc/yield';
import * as say from '#words/trim-and-yield/card-model.ts';
import { filled, worked } from '../batch-sheet/build/filled.ts';
import type { Filled } from '../batch-sheet/sheet-model.ts';
import { percentText } from '../parts/number-text.ts';
import { moneyText } from '../words/money.ts';
import { spreadText } from './spread-text.ts';

/** One pile on the card, trial by trial. */
export interface PileRow {
  readonly id: string;
  readonly name: string;
  readonly role: string;
  readonly masses: readonly (Filled | null)[];
  readonly share: Filled | null;
  readonly value: Filled | null;
}

/** The card of one test as plain words and numbers. Null prints as a box to write in. */
export interface TestCardModel {
  readonly id: string;
  readonly name: string | null;
  readonly price: Filled | null;
  readonly needed: Filled | null;
  readonly usual: Filled | null;
  readonly trials: readonly { readonly id: string; readonly on: string; readonly by: string }[];
  readonly purchased: readonly (Filled | null)[];
  readonly piles: readonly PileRow[];
  readonly unaccounted: readonly (Filled | null)[];
  readonly yields: readonly (Filled | null)[];
  readonly results: Readonly<
    Record<'mean' | 'spread' | 'unaccounted' | 'cost' | 'factor' | 'buy' | 'buyAtLowest', Filled | null>
  >;
}

const ROLES = { usable: say.usable, 'by-product': say.byProduct, waste: say.waste } as const;

function made(text: string | null): Filled | null {
  return text === null ? null : { text, flag: 'W' };
}

/** The cards of all tests. */
export function testCards(slice: YieldSlice, values: YieldValues, currency: string): TestCardModel[] {
  return slice.tests.flatMap((test) => {
    const result = values.tests.find(({ testId }) => testId === test.id);
    return result ? [testCard(test, result, currency)] : [];
  });
}

function testCard(test: YieldTest, result: YieldTestResult, currency: string): TestCardModel {
  const { trials, usable, unaccounted, costPerUsableKg, costFactor } = result;
  const money = (entry: Entry) => {
    const said = filled('money', entry, 'money');
    return said && { ...said, text: `${said.text}${currency ? ` ${currency}` : ''} / ${test.priceBasis}` };
  };
  const share = (spread: Spread | null) => made(spread === null ? null : percentText(spread.mean, 1));
  return {
    id: test.id,
    name: test.name.trim() || null,
    price: money(test.price),
    needed: filled('mass', test.needed, 'kg'),
    usual: usualText(test),
    trials: test.trials.map(({ id, on, by }) => ({ id, on, by })),
    purchased: test.trials.map(({ purchased }) => filled('mass', purchased, 'g', false)),
    piles: test.parts.map((part, index) => ({
      id: part.id,
      name: part.name,
      role: ROLES[part.role],
      masses: test.trials.map(({ parts }) => {
        const entry = parts[part.id];
        return entry ? filled('mass', entry, 'g', false) : null;
      }),
      share: share(result.parts[index]?.spread ?? null),
      value: part.role === 'by-product' ? money(part.value) : null,
    })),
    unaccounted: trials.map(({ unaccountedG }) => worked(unaccountedG)),
    yields: trials.map(({ usableFraction }) =>
      made(usableFraction === null ? null : percentText(usableFraction, 1)),
    ),
    results: {
      mean: share(usable),
      spread: made(usable === null ? null : spreadText(usable, (value) => percentText(value, 1))),
      unaccounted: share(unaccounted),
      cost: made(costPerUsableKg === null ? null : `${moneyText(costPerUsableKg.mean, currency)} / kg`),
      factor: made(costFactor === null ? null : fixedText(costFactor.mean, 3)),
      buy: worked(result.purchaseG, true),
      buyAtLowest: worked(result.purchaseAtLowestG, true),
    },
  };
}

function usualText({ usualLow, usualHigh }: YieldTest): Filled | null {
  const [low, high] = [filled('fraction', usualLow, '%'), filled('fraction', usualHigh, '%')];
  if (low === null && high === null) return null;
  return { text: say.to(low?.text ?? '?', high?.text ?? '?'), flag: 'E' };
}

import type { Params } from '@larderwright/calc/findings';
import type { PlanFindingId } from '@larderwright/calc/plan';
import { fixedText } from '@larderwright/calc/quantities';
import type { Words } from './wording.ts';

/** What a figure is called where an input it needs is missing. */
export const planFigureNames: Readonly<Record<string, string>> = {
  'plan.masses': 'the masses from mix to plate',
  'plan.purchases': 'the shopping list',
  'plan.food-cost': 'the food cost',
  'plan.full-cost': 'the full cost',
  'plan.price': 'the price',
  'plan.timeline': 'the start of this and all earlier steps',
};

const LOSS_NAMES: Readonly<Record<string, string>> = {
  cookLoss: 'cook and chill loss',
  endLoss: 'loss on ends and crumbs',
  residue: 'residue on bowl and filler',
};

const percent = (value: unknown, decimals = 0) => `${fixedText(Number(value) * 100, decimals)} %`;
const kilograms = (value: unknown) => `${fixedText(Number(value) / 1000, 2)} kg`;
const minutes = (value: unknown) => `${fixedText(Number(value), 0)} min`;
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
const lossName = ({ what }: Params) => LOSS_NAMES[String(what)] ?? String(what);
/** "2026-05-01T12:00" with a plain gap. */
const moment = (value: unknown) => String(value).replace('T', ' ');

/** The words of every plan finding. */
export const planWords = {
  'plan.chiller-over': (p) => ({
    title: `${kilograms(p.loadG)} are to be chilled at once; the chiller is rated for ${kilograms(p.capacityG)}.`,
    body: `Too much warm food at once cools too slowly, and the batch may fail its cooling limit. Make it in ${p.runs} runs, or use thinner moulds and an ice bath first.`,
  }),
  'plan.bath-over': (p) => ({
    title: `${p.moulds} moulds are to be cooked; the bath takes ${p.capacity}.`,
    body: `Cook in ${p.runs} runs. A crowded bath cools at loading and heats unevenly.`,
  }),
  'plan.last-mould-low': (p) => ({
    title: `The last of ${p.count} moulds would be only ${percent(p.lastFraction)} full.`,
    body: 'It would cook and chill unlike the others. Change the portions a little, or use a small mould for the rest.',
  }),
  'plan.moulds-too-few': (p) => ({
    title: `The fill is ${kilograms(p.fillG)}; the moulds chosen take ${kilograms(p.capacityG)}.`,
    body: `${kilograms(p.overG)} have no mould yet.`,
  }),
  'plan.part-pieces': (p) => ({
    title: `${p.name}: ${fixedText(Number(p.pieces), 1)} pieces.`,
    body: `Open ${p.whole} and weigh ${fixedText(Number(p.massG), 0)} g. Part of a piece is a weight, not a guess.`,
  }),
  'plan.taste-aromatics': (p) => ({
    title: `This is ${fixedText(Number(p.factor), 1)} times the formula: taste the strong aromatics.`,
    body: `Salt and cure scale exactly. For clove, juniper, garlic and their like start at ${percent(p.minFraction)} to ${percent(p.maxFraction)} of the scaled weight and taste a poached sample.`,
  }),
  'plan.loss-outside-band': (p) => ({
    title: `${capital(lossName(p))}: ${percent(p.lossFraction, 1)}, usually ${percent(p.minFraction)} to ${percent(p.maxFraction)}.`,
    body: p.family
      ? `Usual for: ${p.family}. Your own records count for more.`
      : 'A habit of the trade. Your own records count for more.',
  }),
  'plan.loss-is-all': (p) => ({
    title: `${capital(lossName(p))}: nothing would be left.`,
    body: 'Write a share under 100 %.',
  }),
  'plan.yield-is-none': () => ({
    title: 'At a yield of 0 % nothing is left to use.',
    body: 'Write what trimming leaves, in % of the purchase.',
  }),
  'plan.too-late': (p) => ({
    title: `The first step should have begun by ${moment(p.latestStart)}.`,
    body: 'Serve later, or leave out a step that the product can spare. Never shorten cooking or cooling.',
  }),
  'plan.not-a-date': () => ({
    title: 'The serving time is no date.',
    body: 'Write day and time.',
  }),
  'plan.most-under-least': (p) => ({
    title: `At most ${minutes(p.mostMin)}, at least ${minutes(p.leastMin)}.`,
    body: 'Swap the two times.',
  }),
  'plan.no-price': (p) => ({
    title:
      p.method === 'food-cost'
        ? 'At a food cost of 0 % no price is high enough.'
        : 'At 100 % no price is high enough: nothing of it could pay for the food.',
    body: 'Write a share between the two.',
  }),
} satisfies Words<PlanFindingId>;

/** How each figure of a plan is worked out. */
export const planWorkings = {
  finished: 'Portions times portion weight, divided by one less the loss on ends.',
  fill: 'Finished weight divided by one less the cook and chill loss.',
  mix: 'Fill divided by one less the residue, plus the test poach. Losses multiply; they are never added.',
  factor: 'Mix needed divided by the formula as written. Every line is multiplied by it. Derived.',
  purchase: 'Weight into the bowl divided by the trim yield.',
  foodCost: 'Each purchase times its price, added up, with the sundries. What is trimmed away was paid for.',
  fullCost: 'Food, labour (hours times rate) and overhead.',
  grossProfit: 'Food cost of a portion divided by one less the gross profit.',
  priceAtFoodCost: 'Food cost of a portion divided by the food cost share.',
  margin: 'Full cost of a portion divided by one less the margin.',
  tax: 'Price before tax times one plus the tax. Derived.',
  rounding: 'Money is reckoned unrounded and rounded to the smallest coin where it is shown, a half upward.',
  latest: 'Serving time less the shortest times of this step and all after it.',
  earliest: 'Serving time less the longest times of this step and all after it.',
} as const;

import type { BlendFindingId } from '@larderwright/calc/blend';
import type { Params } from '@larderwright/calc/findings';
import type { StandardLimit, StandardQuality } from '@larderwright/calc/formula';
import { fixedText, plainText, roundTo } from '@larderwright/calc/quantities';
import { moneyText } from './money.ts';
import type { Words } from './wording.ts';

/** What a figure is called where an input it needs is missing. */
export const blendFigureNames: Readonly<Record<string, string>> = {
  'blend.square': 'the square',
  'blend.least-cost': 'the least-cost blend',
  'blend.bounds': 'the blend: what is written there cannot be read',
};

/** Qualities in the middle of a sentence. */
const BLEND_QUALITY_NAMES: Readonly<Record<string, string>> = {
  fat: 'fat',
  protein: 'protein',
  salt: 'salt',
  liver: 'liver',
  'water-to-protein': 'water to protein',
  'added-water': 'added water, by its standard',
  'fat-and-added-water': 'fat and added water, by its standard',
  ice: 'water and ice, by its standard',
};

/** What a standard of composition bounds, in the middle of a sentence. */
const STANDARD_QUALITY_NAMES: Readonly<Record<StandardQuality, string>> = {
  fat: 'fat',
  'added-water': 'added water',
  'fat-and-added-water': 'fat and added water together',
  ice: 'water and ice',
  liver: 'fresh liver',
  pff: 'meat protein, on a fat-free basis',
};

const STANDARD_BASES: Readonly<Record<StandardLimit['of'], string>> = {
  finished: 'of the finished product',
  ingredients: 'of everything that goes in',
};

/** A limit of a standard: "fat at most 30 % of the finished product". */
export function standardLimitText({ quality, side, fraction, of }: StandardLimit): string {
  return `${STANDARD_QUALITY_NAMES[quality]} at ${side} ${plainText(roundTo(fraction * 100, 1))} % ${quality === 'pff' ? '' : STANDARD_BASES[of]}`.trim();
}

const percent = (value: unknown, decimals = 1) => `${fixedText(Number(value) * 100, decimals)} %`;
const kilograms = (value: unknown) => `${fixedText(Number(value) / 1000, 3)} kg`;
const money = ({ money: amount, currency }: Params) => moneyText(Number(amount), String(currency ?? ''));

/** A figure in the unit of its bound. */
function inUnit({ kind, what }: Params, value: unknown): string {
  if (kind === 'stock') return kilograms(value);
  if (what === 'water-to-protein' && String(kind).startsWith('quality'))
    return `${fixedText(Number(value), 2)} to 1`;
  return percent(value, what === 'salt' ? 2 : 1);
}

/** How far, in words: "another kilo", "another 100 g", "0.1 more", "a point". */
function step(params: Params): string {
  const moved = Number(params.movedBy);
  if (params.kind === 'stock') return moved === 1000 ? 'kilo' : `${plainText(moved)} g`;
  if (params.what === 'water-to-protein') return `${plainText(moved)} to 1`;
  const points = Number((moved * 100).toFixed(6));
  return points === 1 ? 'one point' : `${plainText(points)} points`;
}

/** A bound by name: "the stock of cheek", "the most fat". */
function boundName({ kind, what }: Params): string {
  const quality = BLEND_QUALITY_NAMES[String(what)] ?? what;
  switch (kind) {
    case 'stock':
      return `the stock of ${what}`;
    case 'least-share':
      return `the least share of ${what}`;
    case 'most-share':
      return `the most share of ${what}`;
    case 'quality-min':
      return `the least ${quality}`;
    default:
      return `the most ${quality}`;
  }
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function change(params: Params): string {
  const from = inUnit(params, params.limit);
  const to = inUnit(params, params.reachable);
  if (params.kind === 'stock')
    return `${params.what}: ${kilograms(params.reachable)} would be needed, ${from} is there (${kilograms(params.by)} more).`;
  const [word, direction] =
    params.kind === 'least-share' || params.kind === 'quality-min' ? ['down', 'lower'] : ['up', 'higher'];
  return `${capital(boundName(params))}: ${from} must go ${word} to ${to} (${inUnit(params, params.by)} ${direction}).`;
}

function standardFigure(p: Params): string {
  return `${capital(STANDARD_QUALITY_NAMES[p.quality as StandardQuality])} ${percent(p.figureFraction, 2)}`;
}

/** The words of every blend finding. */
export const blendWords = {
  'blend.out-of-reach': (p) => ({
    title: `${percent(p.targetFraction)} fat cannot be reached with these two.`,
    body: `With the fixed lines they reach ${percent(p.leastFraction)} to ${percent(p.mostFraction)}. Choose a leaner or a fatter material; there is no blend beyond the two.`,
  }),
  'blend.same-fat': (p) => ({
    title: `Both free materials are equally fat, so every blend of them has ${percent(p.leastFraction)}.`,
    body: 'Choose one that is leaner or fatter.',
  }),
  'blend.locked-fill-it': () => ({
    title: 'The fixed lines are all of the blend already.',
    body: 'Raise the total or fix less.',
  }),
  'blend.over-stock': (p) => ({
    title: `${p.name}: ${kilograms(p.massG)} wanted, ${kilograms(p.stockG)} there.`,
    body: 'Make less, buy more, or let the least-cost blend look for another way.',
  }),
  'blend.fat-to-protein': (p) => ({
    title: `Fat to protein is ${fixedText(Number(p.ratio), 2)} to 1.`,
    body: `Above about ${plainText(Number(p.mostRatio))} to 1 an emulsion is hard to hold. A habit of the trade, not a limit.`,
  }),
  'blend.declared-over-100': (p) => ({
    title: `The figures of ${p.name} add up to ${percent(p.sumFraction)}.`,
    body: 'Read the pack again.',
  }),
  'blend.lean-has-fat': (p) => ({
    title: `${p.name} stands at no fat at all.`,
    body: 'Trimmed lean still holds 3 to 8 % fat inside the muscle. What looks lean is not what a fat test finds.',
  }),
  'blend.band-reversed': (p) => ({
    title: `${capital(BLEND_QUALITY_NAMES[String(p.quality)] ?? String(p.quality))}: the least is more than the most.`,
    body: 'Swap the two figures.',
  }),
  'blend.standard-broken': (p) => ({
    title: `${standardFigure(p)}: not to be sold as “${p.name}”, which asks for ${p.side === 'most' ? 'at most' : 'at least'} ${percent(p.limitFraction)} (${p.section}).`,
    body: 'A standard of composition of the United States. Change the blend or the name.',
  }),
  'blend.standard-kept': (p) => ({
    title: `${standardFigure(p)}: within the ${percent(p.limitFraction)} of “${p.name}” (${p.section}).`,
    body: 'By the figures of the materials. What counts in law is an analysis of the finished product.',
  }),
  'blend.standard-unknown': (p) => ({
    title: `${capital(STANDARD_QUALITY_NAMES[p.quality as StandardQuality])} of “${p.name}” (${p.side === 'most' ? 'at most' : 'at least'} ${percent(p.limitFraction)}) cannot be told.`,
    body:
      p.why === 'yield'
        ? 'Write the finished weight, in % of what went in: water lost in the cook moves every share.'
        : p.why === 'water'
          ? 'There is no water or ice among the materials. Put in what will be added, or nothing is known of it.'
          : 'There is no blend yet, or a figure of a material is missing.',
  }),
  'blend.no-blend': (p) => ({
    title: 'No blend meets everything asked for.',
    body:
      Number(p.count) > 1
        ? `The shortest way out moves ${p.count} bounds at once. Below: those, and what would do alone.`
        : 'Below: what would have to give way, and by how much.',
  }),
  'blend.relax-together': (p) => ({ title: change(p), body: 'Part of the shortest way out.' }),
  'blend.relax-alone': (p) => ({
    title: change(p),
    body: 'This alone would do, all else kept.',
  }),
  'blend.no-way-alone': () => ({
    title: 'No single bound would do alone.',
    body: 'Two or more must give way together.',
  }),
  'blend.more-stock-saves': (p) => ({
    title: `Another ${step(p)} of ${p.what} would save ${money(p)}.`,
    body: 'On the whole blend, solved again with that much more on hand. Worth buying below that plus what it costs.',
  }),
  'blend.less-stock-costs': (p) => ({
    title: `With ${p.movedBy === 1000 ? 'a kilo' : step(p)} of ${p.what} less the blend would cost ${money(p)} more.`,
    body: 'On the whole blend, solved again with that much less on hand.',
  }),
  'blend.stock-is-last': (p) => ({
    title: `With ${inUnit(p, p.movedBy)} of ${p.what} less there would be no blend at all.`,
    body: 'Weigh the stock before you count on it.',
  }),
  'blend.bound-costs': (p) => ({
    title: `Moving ${boundName(p)} by ${step(p)} would save ${money(p)}.`,
    body: `It stands at ${inUnit(p, p.limit)}. Whether the product bears it is for the cook to say.`,
  }),
  'blend.nothing-to-choose': () => ({
    title: 'Nothing is left to choose.',
    body: 'Every material is fixed, or the fixed lines fill the blend.',
  }),
  'blend.no-answer': () => ({
    title: 'The calculation did not come to an end.',
    body: 'Change a bound a little and try again.',
  }),
} satisfies Words<BlendFindingId>;

/** How each figure of a blend is worked out. */
export const blendWorkings = {
  square:
    'Fat of the second less the target, divided by fat of the second less fat of the first: that share is the first. The rest is the second.',
  lockedSquare:
    'Target times total, less the fat the fixed lines bring, divided by what is left: the fat the two free ones must have.',
  makeup: 'Each share times what the material holds, added up.',
  leastCost: 'Of all blends inside every bound, the one whose shares times prices add up to least.',
  relax:
    'Each bound may be overstepped at a charge; the blend with the least charge shows which must move. Stocks and shares are charged least, salt most.',
  standard:
    'Fat: the blend’s fat ÷ the yield. Added water: water less what was lost, less four times the meat protein, ÷ the yield. Liver and ice: their share of the blend, raw. On a fat-free basis: meat protein ÷ (yield − fat). All that is lost is taken for water. Put everything that goes in among the materials.',
  worth: 'The blend solved again with that one bound moved. It holds for that step, not for twice it.',
} as const;

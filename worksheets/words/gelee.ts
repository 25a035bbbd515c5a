import type { EnzymeFruit, GeleeFindingId } from '@larderwright/calc/gelee';
import { fixedText, toBase } from '@larderwright/calc/quantities';
import { ENZYME_FRUIT_NAMES } from './gelee-names.ts';
import type { Words } from './wording.ts';

/** What a figure is called where an input it needs is missing. */
export const geleeFigureNames: Readonly<Record<string, string>> = {
  'gelee.gelling': 'the weight of gelatine or agar',
  'gelee.acid': 'whether acid weakens the set',
};

const grams = (value: unknown) => `${fixedText(Number(value), 1)} g`;
const percent = (value: unknown, decimals = 1) => `${fixedText(Number(value) * 100, decimals)} %`;
/** A temperature in both scales. */
const temp = (value: unknown) =>
  `${fixedText(Number(value), 0)} °C (${fixedText(Number(value) / toBase(1, 'dF') + 32, 0)} °F)`;
const fruitNames = (value: unknown) =>
  String(value)
    .split(', ')
    .map((fruit) => ENZYME_FRUIT_NAMES[fruit as EnzymeFruit] ?? fruit)
    .join(', ');

/** The words of every finding of a jelly. */
export const geleeWords = {
  'gelee.rules-differ': (p) => ({
    title: `Square root rule ${grams(p.squareRootG)}, linear rule ${grams(p.linearG)}: ${grams(Math.abs(Number(p.differenceG)))} apart.`,
    body: `The ${p.rule === 'linear' ? 'linear' : 'square root'} rule is used here. For equal firmness take the square root. Set a spoonful on a cold plate before you decide.`,
  }),
  'gelee.sheets-not-by-count': () => ({
    title: 'Weigh the sheets; do not count them across grades.',
    body: 'Makers weigh each grade so that a sheet sets about as much as any other. That follows the linear rule. Powders are not evened out in that way.',
  }),
  'gelee.bloom-unusual': (p) => ({
    title: `${p.bloom} bloom is outside food gelatine (${p.min} to ${p.max}).`,
    body: 'Read the pack again.',
  }),
  'gelee.enzyme-fruit': (p) => ({
    title: `Raw ${fruitNames(p.fruit).toLowerCase()}: gelatine will not set.`,
    body: 'Its juice digests gelatine. Boil it first, use it tinned, or set with agar.',
  }),
  'gelee.weakened': (p) => ({
    title: `${Number(p.acid) && Number(p.alcohol) ? 'Acid and alcohol weaken' : Number(p.acid) ? 'Acid (pH below 4) weakens' : 'Alcohol above 10 % weakens'} the set: ${percent(p.minFraction, 0)} to ${percent(p.maxFraction, 0)} more gelatine.`,
    body: 'Add acid and spirit when the jelly is cool, and do not boil it with them. Prove it on a cold plate.',
  }),
  'gelee.sugar-firms': (p) => ({
    title: `${percent(p.sugarFraction, 0)} sugar makes the jelly firmer, and slower to set.`,
    body: 'Prove it on a cold plate before you add gelatine.',
  }),
  'gelee.too-strong': (p) => ({
    title: `${percent(p.strengthFraction)} gelatine; above ${percent(p.mostFraction, 0)} a jelly is rubber.`,
    body: '',
  }),
  'gelee.outside-use': (p) => ({
    title: `${percent(p.strengthFraction)} of the liquid; this use wants ${percent(p.minFraction)} to ${percent(p.maxFraction)}.`,
    body: 'Told for 200 to 220 bloom. A habit of the trade.',
  }),
  'gelee.stock-sets-enough': () => ({
    title: 'The stock sets enough by itself.',
    body: 'Prove it on a cold plate at the temperature it is served at.',
  }),
  'gelee.agar-differs': () => ({
    title: 'Agar sets hard and warm, and stays set at the table.',
    body: 'It must boil to dissolve. It sets near 35 °C (95 °F), cuts short and does not melt in the mouth. Raw fruit does it no harm; much acid does when boiled with it.',
  }),
  'gelee.pour-too-hot': (p) => ({
    title: `Jelly at ${temp(p.pourC)} melts the fat it touches.`,
    body: `Pour at ${temp(p.minC)} to ${temp(p.maxC)}, in two or three goes twenty minutes apart.`,
  }),
  'gelee.core-too-hot': (p) => ({
    title: `The core is at ${temp(p.coreC)}; jelly goes in at ${temp(p.mostC)} or below.`,
    body: 'Earlier it runs into the crust and comes out at the seams.',
  }),
  'gelee.adds-heat': () => ({
    title: 'Warm jelly heats a cooling pie.',
    body: 'The cooling clock does not stop for it. Log the core before and after, and judge the whole log.',
  }),
  'gelee.after-the-cook': () => ({
    title: 'The jelly goes in after the cook: nothing will kill what it brings.',
    body: 'Heat it right through, cool it quickly, pour with clean tools and hands. Throw away what is left in the jug.',
  }),
  'gelee.origin-unknown': () => ({
    title: 'What the gelatine is made of is unknown.',
    body: 'Pork, beef or fish: guests and labels need to know. Fish is an allergen. Read the pack.',
  }),
  'gelee.fish-gelatine': () => ({
    title: 'Fish gelatine is the allergen fish.',
    body: 'Write it on the label.',
  }),
} satisfies Words<GeleeFindingId>;

/** How each figure of a jelly is worked out. */
export const geleeWorkings = {
  strength: 'Gelatine of the liquid, grams to 100 mL, by what the jelly is for.',
  added: 'Strength less what the stock sets by itself.',
  squareRoot: 'Gelatine times the root of: bloom the strength is told for, divided by bloom at hand.',
  linear: 'Gelatine times bloom the strength is told for, divided by bloom at hand.',
  weakening: '10 to 25 % more for acid, and as much for alcohol.',
  sheets: 'Gelatine divided by the weight of a sheet.',
  soakingWater: 'Five to six times the gelatine. It is part of the liquid.',
  underCrust: '60 to 120 mL for each litre inside the crust.',
} as const;

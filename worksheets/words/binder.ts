import type { BinderFindingId, ExtenderKind } from '@larderwright/calc/binder';
import { fixedText, toBase } from '@larderwright/calc/quantities';
import { EXTENDER_NAMES } from './binder-names.ts';
import type { Words } from './wording.ts';

/** What a figure is called where an input it needs is missing. */
export const binderFigureNames: Readonly<Record<string, string>> = {
  'binder.panade': 'the panade',
  'binder.panade-cold': 'whether the panade is cold enough',
  'binder.carried': 'the salt and water brought in',
  'binder.extenders': 'the share of binders',
  'binder.garnish': 'the garnish',
  'binder.pieces': 'the pieces in a slice',
};

const grams = (value: unknown) => `${fixedText(Number(value), 0)} g`;
const mm = (value: unknown) => `${fixedText(Number(value), 0)} mm`;
const percent = (value: unknown, decimals = 0) => `${fixedText(Number(value) * 100, decimals)} %`;
const temp = (value: unknown) =>
  `${fixedText(Number(value), 0)} °C (${fixedText(Number(value) / toBase(1, 'dF') + 32, 0)} °F)`;
const limited = (kind: unknown) =>
  kind === 'all' ? 'Binders and extenders together' : (EXTENDER_NAMES[kind as ExtenderKind] ?? String(kind));

/** The words of every finding and verdict of binders and garnish. */
export const binderWords = {
  'binder.panade-over': (p) => ({
    title: `Panade is ${percent(p.shareFraction)} of the meat; above ${percent(p.mostFraction)} the slice tastes of bread.`,
    body: '10 % is usual.',
  }),
  'binder.panade-warm': (p) => ({
    title: `Panade at ${temp(p.tempC)}.`,
    body: `It goes in at ${temp(p.mostC)} or below. Warm, it melts the fat and wakes germs. Spread it thin on a tray and chill it.`,
  }),
  'binder.panade-differs': (p) => ({
    title: `The panade weighs ${grams(p.cookedG)}; ${grams(p.reckonedG)} was reckoned.`,
    body: 'The weight on the scale is used. Note the loss for next time.',
  }),
  'binder.cream-over': (p) => ({
    title: `Cream is ${percent(p.creamPerMeat)} of the flesh.`,
    body: 'Only very fresh, firm flesh holds its own weight. 60 to 80 % is usual. Poach a sample first.',
  }),
  'binder.garnish-over': (p) => ({
    title: `Garnish is ${percent(p.garnishFraction)} of the mix; above ${percent(p.mostFraction)} the slice falls apart.`,
    body: '10 to 30 % is usual.',
  }),
  'binder.piece-too-large': (p) => ({
    title: `${p.name || 'Garnish'}: pieces of ${mm(p.sizeMm)} in a mould of ${mm(p.smallerMm)}.`,
    body: `Cut them to ${fixedText(Number(p.mostMm), 0, 'down')} mm or less, a third of the smaller side. Larger ones fall out of the slice.`,
  }),
  'binder.piece-over-usual': (p) => ({
    title: `${p.name || 'Garnish'}: pieces of ${mm(p.sizeMm)}; over ${mm(p.mostMm)} they tend to fall out.`,
    body: 'Dust them with starch or gelatine, or lay them along as an inlay.',
  }),
  'binder.raw-allium': (p) => ({
    title: `${p.name || 'Onion or garlic'}: raw, it sours the mix.`,
    body: 'Sweat it, and chill it to 4 °C (39 °F). Raw garlic shut off from air can grow botulism.',
  }),
  'binder.wet-garnish': (p) => ({
    title: `${p.name || 'Garnish'}: ${percent(p.waterFraction)} water, not dried.`,
    body: 'Salt it, press it or bake it dry. A wet face does not hold to the meat.',
  }),
  'binder.allergens': (p) => ({
    title: `Binders and garnish carry allergens: ${p.eu || p.us}.`,
    body: p.us ? `By the United States list: ${p.us}.` : 'None of them is on the United States list of nine.',
  }),
  'binder.allergens-unknown': (p) => ({
    title: `${p.count} ${Number(p.count) === 1 ? 'ingredient has' : 'ingredients have'} no known allergens.`,
    body: 'Choose the ingredient or read the pack. Unknown is not free.',
  }),
  'binder.within-limit': (p) => ({
    title: `${limited(p.kind)}: ${p.shareFraction === undefined ? 'none' : percent(p.shareFraction, 1)}, limit ${percent(p.limitFraction, 1)} of the finished product.`,
    body: 'For sausages sold by name in the United States. The name may allow less.',
  }),
  'binder.over-limit': (p) => ({
    title: `${limited(p.kind)}: ${percent(p.shareFraction, 1)} is over the limit of ${percent(p.limitFraction, 1)}.`,
    body: 'For sausages sold by name in the United States. Take some out, or sell it under another name.',
  }),
  'binder.cannot-tell': (p) => ({
    title: `${limited(p.kind)}: cannot tell whether it is within ${percent(p.limitFraction, 1)}.`,
    body: 'The limit is on the finished product. Weigh every binder, and fill in the finished weight.',
  }),
} satisfies Words<BinderFindingId>;

/** How each figure is worked out. */
export const binderWorkings = {
  cooked: 'Raw parts of the panade, less what steam takes. The scale overrules it.',
  share: 'Panade, cooked and cold, divided by the meat.',
  wanted: 'Meat times the share wanted; raw, divided by what the pan leaves.',
  prepared: 'Bought weight times what preparing leaves. The scale overrules it.',
  pieces:
    'Share of the volume that is this garnish, times the volume of a slice, divided by the volume of a piece. An average: chance decides each slice.',
  onFace: 'Pieces in a volume, times how near a cut must come to meet one. A cube: one and a half edges.',
  carried:
    'Each weight times its salt and water, off the pack or by the table. Steam of the panade is taken off the water.',
} as const;

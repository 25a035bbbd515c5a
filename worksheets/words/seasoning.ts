import { fixedText, plainText } from '@larderwright/calc/quantities';
import type { SeasoningFindingId, SpiceForm } from '@larderwright/calc/seasoning';
import type { Words } from './wording.ts';

/** What a figure is called where an input it needs is missing. */
export const seasoningFigureNames: Readonly<Record<string, string>> = {
  'seasoning.weights': 'the weights of the seasoning',
};

/** The state a seasoning is weighed in. */
export const SPICE_FORM_NAMES: Readonly<Record<SpiceForm, string>> = {
  ground: 'ground, powder',
  whole: 'whole',
  dried: 'dried',
  fresh: 'fresh',
  cooked: 'sweated, cold',
  plain: 'as it comes',
};

/** What the trade knows of a seasoning, by its row of the dose table. */
export const spiceNotes: Readonly<Record<string, string>> = {
  'white-pepper': 'For pale forcemeat. Old, it smells of a stable.',
  'black-pepper': 'Leaves specks. Cracked on the outside, 3 to 6 g/kg.',
  'green-peppercorn': 'Brings the salt of its brine. Count it.',
  'pink-peppercorn': 'Kin of the cashew. Warn people who must avoid cashew or pistachio.',
  nutmeg: 'Much of it tastes of soap and numbs the tongue.',
  mace: 'Finer than nutmeg: eight parts in place of ten.',
  clove: 'The spice most often overdone. It numbs.',
  allspice: 'Country terrines and liver.',
  cinnamon: 'Cassia is the stronger. Some foods have legal limits for its coumarin.',
  ginger: 'Raw ginger keeps a gelatine jelly from setting.',
  cardamom: 'Liver and poultry.',
  'coriander-seed': 'Toast it and grind it the same day.',
  cumin: 'Lamb and mutton.',
  caraway: 'Good with pork and cabbage, and in brawn.',
  'fennel-seed': 'Pork and rabbit.',
  aniseed: 'Strong.',
  'star-anise': 'Twice as strong as aniseed.',
  juniper: 'Game and brine. Bitter above its ceiling.',
  bay: 'A whole leaf to the kilogram on top. Ground, it soon turns bitter.',
  thyme: 'Dried is about a third of fresh.',
  rosemary: 'Chop the needles fine.',
  sage: 'Takes over when the food is cold.',
  marjoram: 'Liver and sausage.',
  tarragon: 'Poultry and rabbit. Blackens in acid.',
  parsley: 'Carries many germs: wash and dry it well.',
  chives: 'Fold in last.',
  dill: 'Fish.',
  garlic: 'Raw and shut off from air it can grow botulism. Blanch or sweat it. Powder is a quarter of fresh.',
  onion: 'Sweat it and chill it to 4 °C (39 °F) before mixing. Raw, it sours the mix.',
  mustard: 'Allergen.',
  'celery-seed': 'Allergen. Carries nitrate of its own.',
  'paprika-sweet': 'Its colour hides grey. It washes out into jelly.',
  'paprika-smoked': 'Its colour hides grey. It washes out into jelly.',
  chilli: 'Cold food tastes less hot.',
  turmeric: 'Mostly for colour.',
  'sichuan-pepper': 'Numbs.',
  'mushroom-powder': 'Soaking water is liquid: count it.',
  'citrus-zest': 'Wash the fruit. No white pith.',
  truffle: 'What may be named truffle, and how much it takes, is a matter of law in some places.',
  sugar: 'Rounds the salt, browns a crust.',
  'soy-sauce': 'Very salty: count it. Allergens.',
  'fish-sauce': 'Very salty: count it. Allergen.',
  anchovy: 'Very salty: count it. Allergen.',
  msg: 'Declare it.',
};

const dose = (value: unknown) => `${plainText(Number(fixedText(Number(value), 2).replace('−', '-')))} g/kg`;
const grams = (value: unknown, decimals = 1) => `${fixedText(Number(value), decimals)} g`;
const percent = (value: unknown) => `${fixedText(Number(value) * 100, 0)} %`;

/** The words of every seasoning finding. */
export const seasoningWords = {
  'seasoning.over-ceiling': (p) => ({
    title: `${p.name}: ${percent(p.ceilingShare)} of its ceiling.`,
    body:
      Number(p.forms) > 1
        ? 'Its forms are counted together, each against its own ceiling. Take some out.'
        : `${dose(p.gPerKg)}${Number(p.sources) > 1 ? ', blend and loose together' : ''}; the ceiling is ${dose(p.ceilingGPerKg)}. Take some out. A ceiling of taste, not of law.`,
  }),
  'seasoning.no-ceiling': (p) => ({
    title: `${p.name}: no ceiling is known for this form.`,
    body: 'It is weighed, but not judged. Taste a poached sample cold.',
  }),
  'seasoning.outside-dose': (p) => ({
    title: `${p.name}: ${dose(p.gPerKg)} is less than is usually tasted.`,
    body: `From ${dose(p.lowGPerKg)} it stands in the background; ${dose(p.typicalGPerKg)} is usual.`,
  }),
  'seasoning.too-small-to-weigh': (p) => ({
    title: `${p.name}: ${grams(p.massG, 2)} is too little for this scale.`,
    body: 'Use a finer scale, mix a larger stock, or carry it in salt: one part in ten.',
  }),
  'seasoning.diluted-in-salt': (p) => ({
    title: `${p.name}: rub ${grams(p.spiceG, 2)} into ${grams(p.saltG)} of salt; ${grams(p.useG)} of that goes in.`,
    body: `It brings ${grams(p.saltInBatchG)} of salt. Weigh so much less plain salt. Never dilute curing salt.`,
  }),
  'seasoning.still-too-small': (p) => ({
    title: `${p.name}: even diluted, ${grams(p.useG, 2)} is too little for this scale.`,
    body: 'Use a finer scale or mix a larger stock.',
  }),
  'seasoning.taste-aromatics': (p) => ({
    title: `${p.name}: start at ${grams(p.leastG)} to ${grams(p.mostG)} of ${grams(p.massG)} and taste.`,
    body: `The batch is ${fixedText(Number(p.times), 1)} times the one it was tasted in. A large batch loses less aroma. Salt and cure are never cut like this.`,
  }),
  'seasoning.allergens': (p) => ({
    title: `The seasoning carries allergens: ${p.eu || p.us}.`,
    body:
      p.eu && p.us
        ? `By the United States list: ${p.us}. Write them on the label and the jar.`
        : p.eu
          ? 'None of them is on the United States list of nine. Write them on the label and the jar.'
          : 'Write them on the label and the jar.',
  }),
  'seasoning.allergens-unknown': (p) => ({
    title: `${p.count} ${Number(p.count) === 1 ? 'seasoning has' : 'seasonings have'} no known allergens.`,
    body: 'Read the packs. Unknown is not free.',
  }),
  'seasoning.cross-reaction': (p) => ({
    title: `${p.name} is kin of the cashew.`,
    body: 'People who react to cashew or pistachio may react to it. Tell them.',
  }),
  'seasoning.natural-nitrate': (p) => ({
    title: `${p.name} carries nitrate of its own.`,
    body: 'A claim that no nitrate was added may be false with it. It is no cure.',
  }),
  'seasoning.raw-garlic': (p) => ({
    title: `${p.name}: raw garlic shut off from air can grow botulism.`,
    body: 'Blanch or sweat it first. Keep the mix cold. Never store it under oil or in vacuum.',
  }),
  'seasoning.raw-ginger': (p) => ({
    title: `${p.name}: raw, it keeps gelatine from setting.`,
    body: 'Cook it before it comes near a jelly, or use it dried.',
  }),
  'seasoning.carries-salt': (p) => ({
    title: `${p.name} brings ${Number(p.minG) === Number(p.maxG) ? grams(p.minG) : `${grams(p.minG)} to ${grams(p.maxG)}`} of salt.`,
    body: 'Count it in the salt of the formula.',
  }),
  'seasoning.old-ground': (p) => ({
    title: `${p.name || 'This blend'} was ground ${p.days} days ago.`,
    body: 'Half the aroma of ground clove, nutmeg or pepper goes in three to six months. Grind afresh or taste it.',
  }),
  'seasoning.many-spices': (p) => ({
    title: `${p.count} spices in one blend.`,
    body: `More than ${p.most} blur each other, and each is harder to weigh.`,
  }),
} satisfies Words<SeasoningFindingId>;

/** How each figure of the seasoning is worked out. */
export const seasoningWorkings = {
  massG: 'Part divided by all parts, times the dose, times the kilograms of the total mix.',
  ceilingShare:
    'All of one spice, blend and loose together, divided by its ceiling. Different forms each by their own ceiling, added up.',
  dilution: 'One part of spice in ten of the mixture; nine tenths of what goes in is salt.',
  stockTimesNeeded: 'Smallest whole number of batches whose least spice is five steps of the scale.',
  wholeG: 'Ground weight divided by what the mill leaves.',
  tasteFromG: '85 to 95 % of the multiplied weight, for strong aromatics above five times the tasted batch.',
} as const;

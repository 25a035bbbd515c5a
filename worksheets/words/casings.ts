import type { CasingSpecies, CasingsFindingId } from '@larderwright/calc/casings';
import { fixedText, plainText } from '@larderwright/calc/quantities';
import type { Words } from './wording.ts';

/** What a figure is called where an input it needs is missing. */
export const casingsFigureNames: Readonly<Record<string, string>> = {
  'casings.length': 'the metres of casing',
  'casings.links': 'the links',
};

const SPECIES_NAMES: Readonly<Record<CasingSpecies, string>> = {
  sheep: 'sheep',
  pig: 'pig',
  cattle: 'cattle',
};

/** What to do with a casing before it is filled, by its row. */
export const casingPrep: Readonly<Record<string, string>> = {
  'sheep-18-20': 'Rinse, soak, flush with water.',
  'sheep-22-24': 'Rinse, soak, flush with water.',
  'sheep-26-28': 'Rinse, soak, flush with water.',
  'hog-28-30': 'Rinse off the salt, soak, flush with water.',
  'hog-32-35': 'Rinse off the salt, soak, flush with water.',
  'hog-38-42': 'Rinse off the salt, soak, flush with water.',
  'beef-runner': 'Rinse off the salt, soak an hour, flush with water.',
  'beef-middle': 'Rinse off the salt, soak, flush with water.',
  bung: 'Soak overnight in the cold, turn inside out, rinse.',
  collagen: 'Use it dry. Keep what it is filled with, and the room, below 35 °C (95 °F).',
  cellulose: 'Use it dry. It is peeled off after the cook.',
  fibrous: 'Soak the fibrous kind half an hour at 40 °C (104 °F). Plastic by its maker.',
  cloth: 'Three turns, tied every 30 mm.',
};

/** How links are twisted. */
export const TWIST_PLAN =
  'Three to four turns each, one link forward, the next back. Prick only to let air out, and never after the cook.';

const mm = (value: unknown) => `${plainText(Number(fixedText(Number(value), 0)))} mm`;
const grams = (value: unknown) => `${fixedText(Number(value), 0)} g`;
const percent = (value: unknown) => `${fixedText(Number(value) * 100, 0)} %`;

/** The words of every finding of casings. */
export const casingsWords = {
  'casings.outside-size': (p) => ({
    title: `${p.name}: stuffs to ${mm(p.minMm)} to ${mm(p.maxMm)}, not ${mm(p.stuffedMm)}.`,
    body: 'Measure one that is filled. Overfilled it bursts, underfilled it wrinkles.',
  }),
  'casings.label-is-not-stuffed': (p) => ({
    title: `${p.name}: taken as ${mm(p.stuffedMm)} once stuffed.`,
    body: 'The label tells the empty gut. Fill a hand of it, measure, and type that.',
  }),
  'casings.fullness': (p) => ({
    title: `Filled to ${percent(p.fullness)}; below ${percent(p.minFraction)} links are slack and hold air.`,
    body: '',
  }),
  'casings.spare-outside-habit': (p) => ({
    title: `${percent(p.spareFraction)} spare; usually ${percent(p.minFraction)} to ${percent(p.maxFraction)} for ${String(p.name).toLowerCase()}.`,
    body: 'For breaks, tails and ties.',
  }),
  'casings.link-outside-habit': (p) => ({
    title: `Links of ${grams(p.linkG)} and ${mm(p.linkMm)}; this casing usually gives ${Number(p.minG) === Number(p.maxG) ? grams(p.minG) : `${grams(p.minG)} to ${grams(p.maxG)}`}.`,
    body: 'A habit of the trade.',
  }),
  'casings.species': (p) => ({
    title: `This casing is gut of ${SPECIES_NAMES[p.species as CasingSpecies] ?? p.species}.`,
    body: 'It is an ingredient: put it on the label. Some guests do not eat it.',
  }),
  'casings.peel': (p) => ({
    title: `${p.name}: not eaten.`,
    body: 'Take it off before it is served, or say so on the label.',
  }),
  'casings.heats-slower': (p) => ({
    title: `At ${mm(p.stuffedMm)} the middle takes about ${fixedText(Number(p.times), 1)} times as long to heat as at ${mm(p.knownMm)}.`,
    body: 'It grows with the square of the diameter. It cools as slowly. The probe decides.',
  }),
  'casings.links-off-target': (p) => ({
    title: `${p.count} links weigh ${grams(p.meanG)} on average; ${grams(p.linkG)} was wanted.`,
    body: `${percent(Math.abs(Number(p.offFraction)))} ${Number(p.offFraction) > 0 ? 'over' : 'short'}. Pinch them elsewhere and weigh ten more.`,
  }),
  'casings.no-link': () => ({
    title: 'The batch does not fill one link.',
    body: 'Check the weights.',
  }),
} satisfies Words<CasingsFindingId>;

/** How each figure is worked out. */
export const casingsWorkings = {
  perMetre: 'A quarter of π, times the stuffed diameter squared, times the density, times how full.',
  casing: 'Weight of the batch divided by the weight of a metre, and the spare on top.',
  links: 'Weight of the batch divided by the weight of a link, rounded down.',
  comeUp: 'Stuffed diameter divided by 30 mm, squared.',
} as const;

import { fixedText, plainText } from '@larderwright/calc/quantities';
import type { SlicingFindingId } from '@larderwright/calc/slicing';
import type { Words } from './wording.ts';

/** What a figure is called where an input it needs is missing. */
export const slicingFigureNames: Readonly<Record<string, string>> = {
  'slicing.portions': 'slices, portions and their price',
};

const mm = (value: unknown) => `${plainText(Number(value))} mm`;
const grams = (value: unknown) => `${fixedText(Number(value), 0)} g`;

/** The words of every slicing finding. */
export const slicingWords = {
  'slicing.outside-habit': (p) => ({
    title: `Slices of ${mm(p.thicknessMm)}; usually ${p.minMm === p.maxMm ? mm(p.minMm) : `${plainText(Number(p.minMm))} to ${mm(p.maxMm)}`}.`,
    body: 'A habit of the trade. Thin slices of a coarse mix break, thick ones of a rich one tire.',
  }),
  'slicing.portion-outside-habit': (p) => ({
    title: `A portion of ${grams(p.portionG)}; usually ${grams(p.minG)} for a starter to ${grams(p.maxG)} for a main.`,
    body: 'A habit of the trade.',
  }),
  'slicing.ends-are-all': (p) => ({
    title: `Two ends of ${mm(p.endTrimMm)} leave nothing of ${mm(p.lengthMm)}.`,
    body: 'Check the length and the ends.',
  }),
  'slicing.no-slice': (p) => ({
    title: `No slice of ${mm(p.thicknessMm)} comes out of ${mm(p.lengthMm)}.`,
    body: 'Check the length and the thickness.',
  }),
  'slicing.fewer-than-planned': (p) => ({
    title: `${p.portions} portions come out; ${p.planned} were planned.`,
    body: `${p.short} short. Slice thinner, or tell the front of house.`,
  }),
} satisfies Words<SlicingFindingId>;

/** How each figure of slicing is worked out. */
export const slicingWorkings = {
  slices: 'Length less both ends, divided by slice and blade together, rounded down.',
  sliceG: 'Weight of the piece times slice thickness divided by length. True of an even section.',
  portions: 'Slices divided by slices to a portion, rounded down.',
  packs: 'Finished weight less ends, divided by the portion, rounded down.',
  price:
    'The whole cost shared among what is sold, then priced as the plan says. Ends, crumbs and what the blade takes were paid for too.',
  perPound: 'Price of a kilogram times 0.45359237.',
} as const;

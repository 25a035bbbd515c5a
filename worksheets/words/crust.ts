import type { CrustFindingId } from '@larderwright/calc/mould';
import { fixedText, plainText } from '@larderwright/calc/quantities';
import type { Words } from './wording.ts';

/** What a figure is called where an input it needs is missing. */
export const crustFigureNames: Readonly<Record<string, string>> = {
  'crust.pastry': 'the pastry',
};

const mm = (value: unknown) => `${plainText(Number(value))} mm`;

/** The words of every finding of a crust. */
export const crustWords = {
  'crust.shape': () => ({
    title: 'No cutting plan for this shape.',
    body: 'Cut a paper pattern from the mould itself, and weigh the pastry.',
  }),
  'crust.too-thin': (p) => ({
    title: `Pastry of ${mm(p.mm)}; under ${mm(p.leastMm)} it leaks.`,
    body: '4 mm is usual for base and walls, 4 to 5 mm for the lid.',
  }),
  'crust.too-thick': (p) => ({
    title: `Pastry of ${mm(p.mm)}; over ${mm(p.mostMm)} it stays raw inside.`,
    body: '4 mm is usual for base and walls, 4 to 5 mm for the lid.',
  }),
  'crust.overlap': (p) => ({
    title: `An overlap of ${mm(p.mm)}; usually ${mm(p.minMm)} to ${mm(p.maxMm)}.`,
    body: 'Too little opens in the oven, too much is bread.',
  }),
  'crust.no-cavity': () => ({
    title: 'The crust leaves no room inside this mould.',
    body: 'Check the thickness and the measures.',
  }),
  'crust.salt-outside': (p) => ({
    title: `The pastry carries ${fixedText(Number(p.saltG), 1)} g of salt.`,
    body: 'It is not in the salt of the filling. Season the filling of a pie a little lower.',
  }),
  'crust.inside-measures': () => ({
    title: 'These measures are the room inside a crust, not the mould.',
    body: 'A sheet cut by them is too small. Measure the bare mould and type that.',
  }),
  'crust.slices-too-narrow': (p) => ({
    title: `Slices of ${mm(p.mm)} cannot overlap by ${mm(p.overlapMm)}.`,
    body: 'Check both.',
  }),
  'crust.lining-salt': (p) => ({
    title: `The slices bring ${fixedText(Number(p.saltG), 1)} g of salt to each mould.`,
    body:
      p.counted === 'yes'
        ? 'It seasons the outside. The lining of the formula counts it, once.'
        : 'It seasons the outside. Nothing counts it yet: write the lining into the formula.',
  }),
} satisfies Words<CrustFindingId>;

/** How each figure is worked out. */
export const crustWorkings = {
  base: 'Length and width, each with twice the depth and twice the overlap; the four corners are cut out.',
  lid: 'Length and width, each with twice the overlap.',
  mass: 'Area times thickness times density, and the spare on top.',
  chimneys: 'One to each 100 to 150 mm of length, evenly apart.',
  slices: 'Length less one overlap, divided by the width of a slice less its overlap, rounded up.',
  caul: '40 to 60 g for a mould of 1.2 L, in proportion.',
  cavity: 'The mould inside, less the crust at both walls, at the base and at the lid.',
} as const;

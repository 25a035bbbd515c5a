import type { Source } from '../source.ts';

export const geleeSources = {
  'gelatine-bloom-unit': {
    title: 'Bloom, the unit of gelatine strength',
    issuer: 'reference work on units of measurement',
    edition: 'undated',
    reviewed: '2026-11-25',
    mark: 'confirmed',
    note: 'Grams that press a plunger of 12.7 mm 4 mm into a gel of 6.67 % after 17 h at 10 °C. Food gelatine 125–250, at most about 300.',
  },
  'gelatine-linear-rule': {
    title: 'Conversion of gelatine by the product of mass and bloom, and masses of sheets by grade',
    issuer: 'cookery writing',
    edition: '2012',
    reviewed: '2026-11-25',
    mark: 'confirmed',
    note: 'Read in one article only.',
  },
  'gelatine-linear-example': {
    title: 'Replacing gelatine of 240 bloom by 200 bloom',
    issuer: 'a gelatine supplier',
    edition: 'undated',
    reviewed: '2026-11-25',
    mark: 'confirmed',
    note: 'One worked example: 10 g become 12 g.',
  },
  'gmia-gelatin-handbook': {
    title: 'Gelatin Handbook: gel strength rises about as the square of the concentration',
    issuer: 'Gelatin Manufacturers Institute of America',
    edition: 'edition not checked',
    reviewed: '2026-11-25',
    mark: 'memory',
    note: 'The text was not read. An unofficial table uses exactly these factors.',
  },
  'garde-manger-gelatine-ratios': {
    title: 'Granulated gelatine to the gallon of stock by use, ratio table of a textbook of the cold kitchen',
    issuer: 'textbook of the cold kitchen, read in a copy',
    edition: 'undated',
    reviewed: '2026-11-25',
    mark: 'confirmed',
    note: 'Ounces a US gallon. Takes granulated gelatine of about 225–250 bloom and unsalted stock for granted.',
  },
  'trade-gelee-habits': {
    title: 'Jelly by use, pouring, what weakens a set, and jelly under a crust',
    issuer: 'common practice of trained kitchens',
    edition: 'undated',
    reviewed: '2026-11-25',
    mark: 'common-practice',
  },
} as const satisfies Record<string, Source>;

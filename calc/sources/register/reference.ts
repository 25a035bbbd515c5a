import type { Source } from '../source.ts';

const reviewed = '2026-11-25';

/** Behind tables that are read and judge nothing: strengths of curing salts, rounding on labels, units. */
export const referenceSources = {
  'trade-curing-salts': {
    title: 'Strengths that packs of curing salt declare',
    issuer: 'makers of curing salts; meat-trade reference works',
    edition: 'undated',
    reviewed,
    mark: 'memory',
    note: 'Read in trade descriptions, not on packs. The strength on your own pack is the only one that counts.',
  },
  'us-21-cfr-101-9': {
    title: '21 CFR 101.9(c) and (d), rounding of declared nutrients',
    issuer: 'United States Food and Drug Administration',
    edition:
      'as tabled in the Food Labeling Guide, appendix H, October 2009; vitamins and minerals as amended 2016',
    reviewed,
    mark: 'confirmed',
    note: 'Added sugars, and calcium and potassium in steps of ten, are from memory.',
  },
  'eu-rounding-2012': {
    title: 'Guidance on tolerances for nutrient values declared on a label, with rounding of declared values',
    issuer: 'European Commission, Directorate-General for Health and Consumers',
    edition: 'December 2012',
    reviewed,
    mark: 'confirmed',
    note: 'The rounding was read in a laboratory’s summary of it. The tolerances are from memory.',
  },
  'nist-sp-811': {
    title: 'Special Publication 811, Guide for the Use of the International System of Units, appendix B.8',
    issuer: 'National Institute of Standards and Technology',
    edition: '2008',
    reviewed,
    mark: 'memory',
    note: 'Definitions of pound, inch and degree Fahrenheit are exact and widely printed.',
  },
} as const satisfies Record<string, Source>;

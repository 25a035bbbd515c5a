import type { Source } from '../source.ts';

export const trendsSources = {
  'nist-individuals-charts': {
    title: 'NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2, Individuals control charts',
    issuer: 'National Institute of Standards and Technology, United States',
    edition: '2003, updated',
    reviewed: '2026-11-27',
    mark: 'memory',
    note: 'The text was read, without its formulas and figures: those are pictures in the copy at hand.',
  },
  'western-electric-1956': {
    title: 'Statistical Quality Control Handbook',
    issuer: 'Western Electric Company',
    edition: '1956',
    reviewed: '2026-11-27',
    mark: 'memory',
    note: 'Its four tests for a point that is more than chance were read in later descriptions, which agree.',
  },
  'sas-qc-tires': {
    title:
      "SAS/QC User's Guide, Example 9.4, diameters of steel belts: individual measurements and moving ranges",
    issuer: 'SAS Institute',
    edition: '9.22',
    reviewed: '2026-11-27',
    mark: 'confirmed',
    note: 'A worked case for the arithmetic of control limits: data and limits as printed.',
  },
} as const satisfies Record<string, Source>;

import type { Source } from '../source.ts';

export const formulaSources = {
  'trade-formula-norms': {
    title: 'Formula ranges of forcemeats, sausages, hams, jellies and kin',
    issuer: 'common practice of trained kitchens',
    edition: 'undated',
    reviewed: '2026-11-25',
    mark: 'common-practice',
    note: 'Working ranges, never limits. Outside them food may be good; inside them it may be bad.',
  },
  'us-9-cfr-319': {
    title:
      '9 CFR part 319: composition of sausages and liver products (319.140, 319.141, 319.180, 319.182, 319.881)',
    issuer: 'United States Department of Agriculture, Food Safety and Inspection Service',
    edition: 'annual edition of 2015',
    reviewed: '2026-11-25',
    mark: 'confirmed',
    note: 'Later editions were not read.',
  },
  'us-9-cfr-319-104': {
    title: '9 CFR 318.19 and 319.104(a): protein of cured pork products on a fat-free basis',
    issuer: 'United States Department of Agriculture, Food Safety and Inspection Service',
    edition: '319.104 as of 2007',
    reviewed: '2026-11-25',
    mark: 'confirmed',
    note: 'Later editions were not read.',
  },
  'us-9-cfr-318-22': {
    title: '9 CFR 318.22, determination of added water in cooked sausages',
    issuer: 'United States Department of Agriculture, Food Safety and Inspection Service',
    edition: 'annual edition of 2015',
    reviewed: '2026-11-25',
    mark: 'confirmed',
    note: 'Later editions were not read.',
  },
  'gb-meat-products-2014': {
    title: 'Products Containing Meat etc. (England) Regulations 2014',
    issuer: 'Parliament of the United Kingdom',
    edition: '2014',
    reviewed: '2026-11-25',
    mark: 'memory',
    note: 'The text was not read.',
  },
  'fr-foie-gras-1993': {
    title: 'Décret no 93-999 of 9 August 1993 on preparations of foie gras',
    issuer: 'Government of France',
    edition: '1993',
    reviewed: '2026-11-25',
    mark: 'memory',
    note: 'The text was not read.',
  },
} as const satisfies Record<string, Source>;

import type { Source } from '../source.ts';

export const cureSources = {
  'us-9-cfr-424-21-c': {
    title:
      '9 CFR 424.21(c), table of food ingredients and sources of radiation: curing agents and accelerators',
    issuer: 'United States Department of Agriculture, Food Safety and Inspection Service',
    edition: 'annual edition of 2015',
    reviewed: '2026-11-25',
    mark: 'confirmed',
    note: 'The law writes ounces per hundredweight; mg/kg are arithmetic on them. Later editions were not read.',
  },
  'us-9-cfr-424-22-b': {
    title: '9 CFR 424.22(b), nitrite in bacon',
    issuer: 'United States Department of Agriculture, Food Safety and Inspection Service',
    edition: 'annual edition of 2015',
    reviewed: '2026-11-25',
    mark: 'confirmed',
    note: 'Later editions were not read.',
  },
  'us-fsis-7620-3': {
    title: 'FSIS Directive 7620.3, Processing Inspectors’ Calculations Handbook',
    issuer: 'United States Department of Agriculture, Food Safety and Inspection Service',
    edition: 'revision of 1995',
    reviewed: '2026-11-25',
    mark: 'confirmed',
    note: 'The opening of chapter 3 was read; formulas and the 120 ppm policy were read as quoted by others.',
  },
  'ca-cured-meat': {
    title: 'Meat Hygiene Manual of Procedures, chapter 4, glossary: curing; List of Permitted Preservatives',
    issuer: 'Canadian Food Inspection Agency; Health Canada',
    edition: 'archived manual, undated copy',
    reviewed: '2026-11-25',
    mark: 'confirmed',
    note: 'Read in copies. The weight basis of the nitrite row (whole raw batch) was seen only as quoted by a supplier.',
  },
  'gb-1333-2008': {
    title:
      'Regulation (EC) No 1333/2008, Annex II, categories 08.3.1 and 08.3.2, as assimilated in Great Britain',
    issuer: 'European Parliament and Council; retained for Great Britain',
    edition: 'text before the amendments of 2023',
    reviewed: '2026-11-25',
    mark: 'confirmed',
    note: 'The figures and their basis were read in the older text. That Great Britain still applies them unchanged is from memory.',
  },
  'eu-2023-2108': {
    title:
      'Regulation (EU) 2023/2108 amending Annex II to Regulation (EC) No 1333/2008, nitrites and nitrates',
    issuer: 'European Commission',
    edition: '2023, applying from 9 October 2025',
    reviewed: '2026-11-25',
    mark: 'memory',
    note: 'Date, ion basis and the size of the cut were confirmed in summaries. The figures for meat were not seen in the text.',
  },
  'anz-schedule-15': {
    title: 'Australia New Zealand Food Standards Code, Schedule 15, items 8.2 and 8.3',
    issuer: 'Food Standards Australia New Zealand',
    edition: 'not seen',
    reviewed: '2026-11-25',
    mark: 'memory',
    note: 'The text was not read.',
  },
  'codex-stan-192': {
    title: 'General Standard for Food Additives, CODEX STAN 192-1995, category 08.3.2',
    issuer: 'Codex Alimentarius Commission',
    edition: 'not seen for this category',
    reviewed: '2026-11-25',
    mark: 'memory',
    note: 'The figure for whole pieces (08.2.2) was read; that of comminuted products (08.3.2) was not.',
  },
  'fr-nitrite-plan-2023': {
    title: 'Action plan to reduce the use of nitrite and nitrate additives in food',
    issuer: 'Government of France',
    edition: '2023',
    reviewed: '2026-11-25',
    mark: 'confirmed',
    note: 'Read in a summary. A trade undertaking, not a legal limit.',
  },
  'on-fish-plant-guidelines': {
    title: 'Fish Plant Guidelines, F.B.14.14, salting: water-phase salt',
    issuer: 'Ontario Ministry of Agriculture, Food and Rural Affairs',
    edition: 'undated',
    reviewed: '2026-11-25',
    mark: 'confirmed',
  },
} as const satisfies Record<string, Source>;

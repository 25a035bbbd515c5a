import type { Source } from '../source.ts';

const reviewed = '2026-11-25';

export const labelSources = {
  'eu-1169-2011-label': {
    title:
      'Regulation (EU) No 1169/2011, Annexes VII part A (ingredient list), VIII (quantities), XIV (energy) and XV (order of the table)',
    issuer: 'European Parliament and Council',
    edition: 'text as copied; Annex XIV as consolidated to 13 March 2024',
    reviewed,
    mark: 'confirmed',
    note: 'Articles 18 to 24, Annex VI part A and the exemption of Annex V are from memory.',
  },
  'uk-meat-content-2003': {
    title: 'The Meat Products (England) Regulations: guidance notes, calculation of meat content, page 61',
    issuer: 'Food Standards Agency',
    edition: 'September 2003',
    reviewed,
    mark: 'confirmed',
    note: 'Excess connective tissue, excess fat and declarable meat were read there. The allowance for collagen is from memory, by symmetry with that for fat.',
  },
  'collagen-of-cuts-1986': {
    title: 'Collagen content of meat carcasses of known history',
    issuer: 'Meat Science',
    edition: 'volume 12, 1986, pages 189–203, abstract',
    reviewed,
    mark: 'confirmed',
    note: 'Per cent of the wet, fat-free meat. The title is from memory; the figures stand in the abstract.',
  },
  'us-21-cfr-101-4': {
    title: '21 CFR 101.4(a), order of the ingredient list; 9 CFR 317.2(f) for meat',
    issuer: 'United States Food and Drug Administration; Food Safety and Inspection Service',
    edition: '2006',
    reviewed,
    mark: 'confirmed',
    note: 'The paragraph for meat is from memory.',
  },
  'us-daily-values-2016': {
    title: '21 CFR 101.9(c)(8) and (9), daily values',
    issuer: 'United States Food and Drug Administration',
    edition: '2016 rule',
    reviewed,
    mark: 'confirmed',
    note: 'Read in a table made after the rule.',
  },
  'us-daily-values-1993': {
    title: '9 CFR 317.309, daily values before 2016',
    issuer: 'United States Department of Agriculture, Food Safety and Inspection Service',
    edition: '1993 rule; replacement proposed in 82 FR 6732 (19 January 2017), not final in autumn 2023',
    reviewed,
    mark: 'confirmed',
    note: 'Makers of meat products may use the panel of the food rule meanwhile. Check before printing.',
  },
  'us-reference-amounts': {
    title: '9 CFR 317.312 and 381.412, 21 CFR 101.12: reference amounts',
    issuer:
      'United States Department of Agriculture, Food Safety and Inspection Service; Food and Drug Administration',
    edition: 'undated copies',
    reviewed,
    mark: 'confirmed',
    note: 'Read: poultry, bacon and dried meats. Pâté, spreads, linked sausage, whole cuts and fish are from memory.',
  },
  'us-safe-handling': {
    title: '9 CFR 317.2(k) and (l), 381.125: keep refrigerated, and safe handling instructions',
    issuer: 'United States Department of Agriculture, Food Safety and Inspection Service',
    edition: 'Federal Register 94-7217 of 28 March 1994',
    reviewed,
    mark: 'confirmed',
  },
  'usda-retention-6': {
    title: 'Table of Nutrient Retention Factors, alcohol',
    issuer: 'United States Department of Agriculture',
    edition: 'Release 6',
    reviewed,
    mark: 'confirmed',
    note: 'Read in copies of the table.',
  },
} as const satisfies Record<string, Source>;

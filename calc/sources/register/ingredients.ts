import type { Source } from '../source.ts';

export const ingredientsSources = {
  'usda-sr28': {
    title: 'USDA National Nutrient Database for Standard Reference',
    issuer: 'United States Department of Agriculture, Agricultural Research Service',
    edition: 'Release 28 (SR28)',
    reviewed: '2026-11-25',
    mark: 'confirmed',
    note: 'Read from copies of the release’s own files. SR28 was the last numbered release.',
  },
  'ciqual-2020': {
    title: 'Ciqual French food composition table',
    issuer: 'Anses, French agency for food, environmental and occupational health and safety',
    edition: '2020 (7 July 2020)',
    reviewed: '2026-11-25',
    mark: 'confirmed',
    note: 'Read from a copy of the published table. Licence Ouverte: source and date to be named.',
  },
  'standard-atomic-weights': {
    title: 'Standard atomic weights',
    issuer: 'International Union of Pure and Applied Chemistry',
    edition: 'conventional values',
    reviewed: '2026-11-25',
    mark: 'memory',
    note: 'Compositions of salts and additives are arithmetic on formulas; the atomic weights were not looked up.',
  },
  'bind-constants-chart': {
    title: 'Bind constants of sausage materials: fat, protein and moisture-to-protein ratio',
    issuer: 'undated chart in use in the sausage trade, no issuer named',
    edition: 'undated',
    reviewed: '2026-11-25',
    mark: 'common-practice',
    note: 'Gives fat, protein and a ratio only; water is protein × ratio. No other value is known.',
  },
  'kitchen-compositions': {
    title: 'Working compositions of raw materials',
    issuer: 'common practice of trained kitchens',
    edition: 'undated',
    reviewed: '2026-11-25',
    mark: 'common-practice',
    note: 'Rounded, ± 3 points; for planning. A supplier’s sheet or an analysis outranks them.',
  },
  'eu-1169-2011': {
    title:
      'Regulation (EU) No 1169/2011, Annex I (salt = sodium × 2.5), Annex II (allergens), Annex VII part B point 17 (meat)',
    issuer: 'European Parliament and Council',
    edition: 'text as copied; current consolidation not compared',
    reviewed: '2026-11-25',
    mark: 'confirmed',
  },
  'us-major-allergens': {
    title:
      'Major food allergens: FALCPA of 2004 and FASTER Act of 2021, with the tree-nut list of January 2025',
    issuer: 'United States Congress; Food and Drug Administration',
    edition: '2004, 2021, 2025',
    reviewed: '2026-11-25',
    mark: 'confirmed',
    note: 'The tree-nut list was read as reported: twelve nuts, chestnut and coconut left off. The two Acts are from memory.',
  },
  'cfia-poultry-species': {
    title: 'Cooked ready-to-eat meat products: what the poultry tables cover',
    issuer: 'Canadian Food Inspection Agency',
    edition: 'undated',
    reviewed: '2026-11-25',
    mark: 'memory',
    note: 'Duck, goose, guinea fowl, pheasant, partridge, pigeon, quail and ostrich count as poultry. The text was not read.',
  },
} as const satisfies Record<string, Source>;

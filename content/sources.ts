import { SOURCES, type Source } from '@larderwright/calc/sources';

const REVIEWED = '2026-11-25';
const NOT_READ = 'The text was not read. Named for what it rules on.';

/**
 * Sources the words lean on and no computation does: hygiene law, advice, workplace practice.
 * Those behind a computed figure stand in calc/sources. An id is given once in the two together.
 */
export const WORD_SOURCES = {
  'common-practice': {
    title: 'Common practice of trained kitchens',
    issuer: 'no published source',
    edition: 'undated',
    reviewed: REVIEWED,
    mark: 'common-practice',
  },
  'eu-852-2004': {
    title: 'Regulation (EC) No 852/2004 on the hygiene of foodstuffs',
    issuer: 'European Parliament and Council',
    edition: '2004, as amended',
    reviewed: REVIEWED,
    mark: 'memory',
    note: NOT_READ,
  },
  'eu-853-2004': {
    title: 'Regulation (EC) No 853/2004, specific hygiene rules for food of animal origin, Annex III',
    issuer: 'European Parliament and Council',
    edition: '2004, as amended',
    reviewed: REVIEWED,
    mark: 'memory',
    note: NOT_READ,
  },
  'codex-cxc-1': {
    title: 'General Principles of Food Hygiene, CXC 1-1969: good practice and the seven principles of HACCP',
    issuer: 'Codex Alimentarius Commission',
    edition: 'as revised in 2020',
    reviewed: REVIEWED,
    mark: 'memory',
    note: NOT_READ,
  },
  'eu-2073-2005': {
    title:
      'Regulation (EC) No 2073/2005 on microbiological criteria, with Regulation (EU) 2024/2895 on Listeria',
    issuer: 'European Commission',
    edition: '2005, as amended 2024, the amendment applying from July 2026',
    reviewed: REVIEWED,
    mark: 'memory',
    note: NOT_READ,
  },
  'eu-1333-2008': {
    title: 'Regulation (EC) No 1333/2008 on food additives, Annex II: sulphites in meat preparations',
    issuer: 'European Parliament and Council',
    edition: '2008, as amended',
    reviewed: REVIEWED,
    mark: 'memory',
    note: NOT_READ,
  },
  'us-21-cfr-172-170': {
    title: '21 CFR 172.170 and 172.175, sodium nitrate and sodium nitrite',
    issuer: 'United States Food and Drug Administration',
    edition: 'undated',
    reviewed: REVIEWED,
    mark: 'memory',
    note: NOT_READ,
  },
  'us-food-code-handling': {
    title:
      'Food Code, 2-201 ill workers, 3-302.11 separation, 3-501.15 cooling methods, 4-502.11 thermometers',
    issuer: 'United States Food and Drug Administration',
    edition: '2022',
    reviewed: REVIEWED,
    mark: 'memory',
    note: 'Of these, only the cooling methods of 3-501.15 were read, in a state text that repeats them.',
  },
  'anz-2-4-hour-guide': {
    title: 'Safe Food Australia: the 2-hour and 4-hour guideline for potentially hazardous food',
    issuer: 'Food Standards Australia New Zealand',
    edition: 'undated',
    reviewed: REVIEWED,
    mark: 'memory',
    note: NOT_READ,
  },
  'pregnancy-advice': {
    title: 'Advice on diet in pregnancy: pâté, liver, raw and cured meat',
    issuer: 'national health services',
    edition: 'undated',
    reviewed: REVIEWED,
    mark: 'memory',
    note: 'Wording differs between countries. Use your own.',
  },
  'nitrite-poisoning-cases': {
    title: 'Case reports of nitrite eaten in mistake for salt',
    issuer: 'medical and public-health journals',
    edition: '1997 and 2002',
    reviewed: REVIEWED,
    mark: 'memory',
    note: 'The reports were not read again.',
  },
  'lead-game-advice': {
    title: 'Advice on lead in game shot with lead ammunition',
    issuer: 'national food agencies',
    edition: 'undated',
    reviewed: REVIEWED,
    mark: 'memory',
    note: 'Wording differs between countries. Use your own.',
  },
  'poison-plant-advice': {
    title: 'Advice on wild fungi, poisonous plants, fruit stones and raw beans',
    issuer: 'national food agencies and poisons services',
    edition: 'undated',
    reviewed: REVIEWED,
    mark: 'memory',
    note: 'Wording differs between countries. Use your own.',
  },
  'workplace-safety': {
    title: 'Workplace rules for machinery, blades, heat, gas and lifting',
    issuer: 'national workplace-safety authorities',
    edition: 'undated',
    reviewed: REVIEWED,
    mark: 'memory',
    note: 'Your own law and the maker’s instructions govern.',
  },
  'scald-times': {
    title: 'Time for hot water to burn skin, by temperature',
    issuer: 'burn-prevention literature',
    edition: 'undated',
    reviewed: REVIEWED,
    mark: 'memory',
    note: 'Skin of children and the old burns sooner.',
  },
  'uk-e-coli-o157-guidance': {
    title: 'E. coli O157: control of cross-contamination',
    issuer: 'Food Standards Agency',
    edition: '2014',
    reviewed: REVIEWED,
    mark: 'memory',
    note: NOT_READ,
  },
  'garde-manger-units': {
    title:
      'Training units on pâtés, terrines and meat-based charcuterie (SITHCCC039, AMP and MTM meat units)',
    issuer: 'Australian vocational training',
    edition: 'undated',
    reviewed: REVIEWED,
    mark: 'memory',
    note: 'Used for what a learner must show, not for figures.',
  },
  'forcemeat-textbooks': {
    title: 'Muscle proteins, fat and gelatine: general food science',
    issuer: 'textbooks of meat science and cookery',
    edition: 'undated',
    reviewed: REVIEWED,
    mark: 'memory',
    note: 'General knowledge of the field. No single book was read again.',
  },
  'uk-vp-map-guidance': {
    title:
      'Guidance on vacuum and modified-atmosphere packed chilled foods, with respect to non-proteolytic Clostridium botulinum',
    issuer: 'Food Standards Agency and Food Standards Scotland',
    edition: 'December 2020',
    reviewed: REVIEWED,
    mark: 'confirmed',
    note: 'Opening pages and the training module were read; the list of hurdles in a textbook extract.',
  },
  'us-food-code-rop': {
    title: 'Food Code, 3-502.12, reduced oxygen packaging',
    issuer: 'United States Food and Drug Administration',
    edition: '2022',
    reviewed: REVIEWED,
    mark: 'confirmed',
    note: 'Read in state texts that repeat it.',
  },
  'us-food-code-3-501-17': {
    title: 'Food Code, 3-501.17, date marking',
    issuer: 'United States Food and Drug Administration',
    edition: '2022',
    reviewed: REVIEWED,
    mark: 'confirmed',
    note: 'Read in guidance and part of a state text.',
  },
  'us-cold-storage-chart': {
    title: 'Cold Food Storage Chart',
    issuer: 'United States Departments of Agriculture and of Health, FoodSafety.gov',
    edition: 'current chart and one older edition',
    reviewed: REVIEWED,
    mark: 'confirmed',
    note: 'Read in copies of the chart.',
  },
  'us-21-cfr-113-114': {
    title: '21 CFR 108, 113 and 114: low-acid canned and acidified foods',
    issuer: 'United States Food and Drug Administration',
    edition: 'undated',
    reviewed: REVIEWED,
    mark: 'confirmed',
    note: 'The definitions were read in a state text.',
  },
  'fsis-listeria-guideline': {
    title: 'Compliance guideline on Listeria monocytogenes in ready-to-eat products, with 9 CFR 430',
    issuer: 'United States Department of Agriculture, Food Safety and Inspection Service',
    edition: 'undated training text',
    reviewed: REVIEWED,
    mark: 'confirmed',
  },
} as const satisfies Record<string, Source>;

/** Every source by id: calc's and the words'. */
export const ALL_SOURCES: Readonly<Record<string, Source>> = { ...WORD_SOURCES, ...SOURCES };

import type { Source } from '../source.ts';

const reviewed = '2026-11-25';
const FSIS = 'United States Department of Agriculture, Food Safety and Inspection Service';
const FDA = 'United States Food and Drug Administration';

export const coolingSources = {
  'fsis-stabilization': {
    title: 'FSIS Stabilization Guideline for Meat and Poultry Products (Revised Appendix B)',
    issuer: FSIS,
    edition: 'options as worded in 1999; guideline of December 2021',
    reviewed,
    mark: 'memory',
    note: 'Options 1 and 2 read in the 1999 wording, the 5 h and 10 h of cured products in trial papers. The 2021 text was not read beyond its opening: numbering and the 100 and 250 ppm pair are from memory.',
  },
  'us-ca-3-910-15': {
    title: 'California Code of Regulations, title 3, section 910.15: cooling of cooked meat',
    issuer: 'State of California',
    edition: 'undated',
    reviewed,
    mark: 'confirmed',
    note: 'That FSIS Directive 7110.3 says the same is from memory.',
  },
  'food-code-cooling': {
    title: 'Food Code 3-501.14, cooling',
    issuer: FDA,
    edition: '2022; same figures since 2005',
    reviewed,
    mark: 'confirmed',
    note: 'Read in state adoptions.',
  },
  'anz-3-2-2': {
    title: 'Food Standards Code, Standard 3.2.2, clause 7(3): cooling',
    issuer: 'Food Standards Australia New Zealand',
    edition: 'undated',
    reviewed,
    mark: 'confirmed',
  },
  'ca-retail-code-2016': {
    title: 'Food Retail and Food Services Code, cooling',
    issuer: 'Canadian food inspection committee',
    edition: '2016',
    reviewed,
    mark: 'memory',
    note: 'Read in a summary only. Provinces print their own: check yours.',
  },
  'fr-arrete-2009': {
    title: 'Arrêté of 21 December 2009, rapid cooling in retail and catering',
    issuer: 'Government of France',
    edition: '2009',
    reviewed,
    mark: 'confirmed',
  },
  'large-meats-1998': {
    title:
      'Cooling of large cooked meats: Review 8, carried into Safe Food Australia (2001) and the Australian standard for meat',
    issuer: 'Campden & Chorleywood Food Research Association',
    edition: '1998',
    reviewed,
    mark: 'memory',
    note: 'Cured maximum read whole. Uncured: 2.5 h, 6 h and the total of 10 h read, the last leg by difference; one copy prints 1.6 h. First and last legs of good practice are from memory.',
  },
  'uk-retail-meat-code': {
    title: 'Assurance code of the retail meat trade: cooling of cooked pieces under 5 kg',
    issuer: 'trade assurance, United Kingdom',
    edition: 'undated',
    reviewed,
    mark: 'memory',
  },
  'cperfringens-cured-trials': {
    title: 'Growth of Clostridium perfringens in cured meat during slow cooling',
    issuer: 'trial reports of 2013–2017, among them Osterbauer et al., J. Food Prot. 80:1697',
    edition: '2013–2017',
    reviewed,
    mark: 'confirmed',
    note: '100 ppm nitrite without an accelerator let it grow by 2 to 4 log; with 547 ppm ascorbate by less than 1.',
  },
  'cooling-house-rules': {
    title: 'Reading a cooling log: worst case, gaps, clock start',
    issuer: 'common practice',
    edition: 'undated',
    reviewed,
    mark: 'common-practice',
    note: 'A leg passes on the longest time the readings allow and fails only on readings that prove a miss. Gaps over 60 minutes are never bridged.',
  },
} as const satisfies Record<string, Source>;

import type { Source } from '../source.ts';

const reviewed = '2026-11-27';

export const growthSources = {
  'cperfringens-cooling-model': {
    title: 'Growth of Clostridium perfringens in roasted chicken and braised beef during cooling',
    issuer: 'Food Control (paper, one-step dynamic analysis)',
    edition: 'undated',
    reviewed,
    mark: 'memory',
    note: 'The four figures of each food read in the abstract; that they belong to the cardinal model, and the model itself, are from memory. Uncured, lightly salted, near-neutral meat on its way from the cook to the refrigerator. Root mean square error 0.2 to 0.3 log.',
  },
  'cperfringens-lag': {
    title: 'Lag of Clostridium perfringens as a constant number of generation times',
    issuer: 'Juneja et al. 2001',
    edition: '2001',
    reviewed,
    mark: 'memory',
    note: 'That the ratio is constant was read; its value 8.068 is from memory. One hour more or less of lag changes the growth by a great deal.',
  },
  'baranyi-roberts-1994': {
    title: 'A dynamic approach to predicting bacterial growth in food',
    issuer: 'Baranyi & Roberts, Int. J. Food Microbiol. 23:277',
    edition: '1994',
    reviewed,
    mark: 'memory',
    note: 'Equations from memory; their closed form for any temperature history is derived.',
  },
  'fda-fsis-listeria-2003': {
    title: 'Listeria monocytogenes risk assessment: growth at 5 °C by kind of food and its conversion',
    issuer: 'United States Food and Drug Administration; Food Safety and Inspection Service',
    edition: 'September 2003',
    reviewed,
    mark: 'memory',
    note: 'The conversion between temperatures gives back 23 printed figures of appendix 8. The rate of each kind of food is from memory. No lag. Refrigerator range, about 0 to 12 °C.',
  },
  'mejlholm-dalgaard-2009': {
    title:
      'Growth of Listeria monocytogenes in lightly preserved seafood and meat by temperature, pH, water activity and acids',
    issuer:
      'Mejlholm & Dalgaard, J. Food Prot. 72:2132; for meat Mejlholm et al. 2010, Int. J. Food Microbiol. 141:137',
    edition: '2009, 2010',
    reviewed,
    mark: 'memory',
    note: 'All constants, the range of 2 to 25 °C, pH 5.6 to 7.7 and water activity over 0.95, and the lag of 4.5 generations are from memory. It came out below one published trial in cooked ham (1.7 against 2.0 log).',
  },
} as const satisfies Record<string, Source>;

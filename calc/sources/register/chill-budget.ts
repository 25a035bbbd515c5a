import type { Source } from '../source.ts';

export const chillBudgetSources = {
  'trade-grinding-habits': {
    title: 'Temperatures of meat, fat and mix in grinding, chopping and mixing',
    issuer: 'common practice of trained kitchens',
    edition: 'undated',
    reviewed: '2026-11-25',
    mark: 'common-practice',
    note: 'Quality of the bind. Safety of the time out of the chiller is judged elsewhere.',
  },
  'pork-fat-melting-shares': {
    title: 'Share of pork fat that is melted at a temperature, by depot, in a handbook of meat processing',
    issuer: 'publisher not checked',
    edition: 'page 151; edition not checked',
    reviewed: '2026-11-25',
    mark: 'confirmed',
    note: 'Back fat: 17.2 % melted at 10 °C, 73.7 % at 40 °C. The title of the book was not recorded.',
  },
} as const satisfies Record<string, Source>;

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
  'toldra-handbook-2010': {
    title: 'Handbook of Meat Processing, page 151: pork fat by depot, share melted at a temperature',
    issuer: 'F. Toldrá (editor)',
    edition: '2010',
    reviewed: '2026-11-25',
    mark: 'confirmed',
    note: 'Back fat: 17.2 % melted at 10 °C, 73.7 % at 40 °C.',
  },
} as const satisfies Record<string, Source>;

import type { Source } from '../source.ts';

export const yieldSources = {
  'oklahoma-swine-yield': {
    title: 'How much meat? Yield of a market hog',
    issuer: 'Oklahoma Department of Agriculture, Food and Forestry',
    edition: 'undated, read as copied in a data set',
    reviewed: '2026-11-25',
    mark: 'confirmed',
    note: 'The title is not certain. The text prints 75 % carcass yield, yet its own weights give 70.4 %.',
  },
  'household-management-joints': {
    title: 'The Book of Household Management, weights of joints bought, wasted, cooked and eaten',
    issuer: 'Ward, Lock and Co., London',
    edition: 'page 631; edition not checked',
    reviewed: '2026-11-25',
    mark: 'confirmed',
    note: 'Leg and loin do not close by an ounce as printed.',
  },
  'pork-belly-and-butt-2021': {
    title: 'Quality differences in pork belly and shoulder butt cuts with different quality grades, table 2',
    issuer: 'Food Science of Animal Resources',
    edition: 'volume 41 (2), 2021, pages 224–236',
    reviewed: '2026-11-25',
    mark: 'confirmed',
  },
} as const satisfies Record<string, Source>;

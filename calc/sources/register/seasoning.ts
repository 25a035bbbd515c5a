import type { Source } from '../source.ts';

export const seasoningSources = {
  'trade-spice-doses': {
    title: 'Doses of spices, herbs and condiments in cold forcemeats, and blends by parts',
    issuer: 'common practice of trained kitchens',
    edition: 'undated',
    reviewed: '2026-11-25',
    mark: 'common-practice',
    note: 'Working doses and ceilings of taste, never limits of law.',
  },
} as const satisfies Record<string, Source>;

import type { Source } from '../source.ts';

export const casingsSources = {
  'trade-casing-sizes': {
    title: 'Casings: stuffed diameters, links, soaking and spare',
    issuer: 'common practice of trained kitchens',
    edition: 'undated',
    reviewed: '2026-11-25',
    mark: 'common-practice',
    note: 'Natural casings vary along one strand.',
  },
} as const satisfies Record<string, Source>;

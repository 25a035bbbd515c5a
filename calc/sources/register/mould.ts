import type { Source } from '../source.ts';

export const mouldSources = {
  'cgpm-1901': {
    title: 'Declaration on the unit of mass and on the definition of weight; conventional value of gₙ',
    issuer: 'General Conference on Weights and Measures',
    edition: '3rd CGPM, 1901',
    reviewed: '2026-11-25',
    mark: 'memory',
    note: 'Standard gravity 9.80665 m/s².',
  },
} as const satisfies Record<string, Source>;

import type { Source } from '../source.ts';

export const binderSources = {
  'trade-binder-habits': {
    title: 'Panades, binders and garnish of forcemeats: kinds, shares and sizes',
    issuer: 'common practice of trained kitchens',
    edition: 'undated',
    reviewed: '2026-11-25',
    mark: 'common-practice',
    note: 'Working figures, never limits of law.',
  },
  'crofton-stereology': {
    title: 'Mean calliper diameter and the count of particle sections on a plane, N_A = N_V · D',
    issuer: 'textbooks of stereology',
    edition: 'various',
    reviewed: '2026-11-25',
    mark: 'memory',
  },
} as const satisfies Record<string, Source>;

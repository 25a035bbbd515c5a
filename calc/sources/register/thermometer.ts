import type { Source } from '../source.ts';

export const thermometerSources = {
  'thermometer-check': {
    title: 'Checking a thermometer in melting ice and in boiling water',
    issuer: 'common practice',
    edition: 'undated',
    reviewed: '2026-11-27',
    mark: 'common-practice',
    note: 'Within 1 °C in both unless the plan says less; a check is good for a week. The line between the two checks is straight.',
  },
  'hyland-wexler-1983': {
    title:
      'Formulations for the thermodynamic properties of the saturated phases of water, as in ASHRAE Fundamentals',
    issuer: 'R. W. Hyland and A. Wexler',
    edition: '1983',
    reviewed: '2026-11-27',
    mark: 'memory',
    note: 'Constants from memory.',
  },
} as const satisfies Record<string, Source>;

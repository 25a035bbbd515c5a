import type { Figure } from './figure.ts';

/** Weighing curing salt. Limits stand in calc/cure and are shown by rule set. */
export const cureFigures = {
  'cure-scale-step': { value: 0.1, unit: 'g', mark: 'common-practice' },
  'cure-readability-times': { value: 50, unit: 'times', mark: 'common-practice' },
  'spoon-error': { value: 30, unit: '%', mark: 'common-practice' },
} as const satisfies Record<string, Figure>;

import { MIN_SCALE_STEPS } from '@larderwright/calc/cure';
import type { Figure } from './figure.ts';

/** Weighing curing salt. Limits stand in calc/cure and are shown by rule set. */
export const cureFigures = {
  'cure-scale-step': { value: 0.1, unit: 'g', mark: 'common-practice' },
  'cure-readability-times': { value: MIN_SCALE_STEPS, unit: 'times', mark: 'common-practice' },
  'spoon-error': { value: 30, unit: '%', mark: 'common-practice' },
} as const satisfies Record<string, Figure>;

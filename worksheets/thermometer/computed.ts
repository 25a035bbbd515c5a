import { derive } from '../state/derived.ts';
import type { ThermometerComputed } from './compute.ts';

/** What calc makes of the thermometers on the bench. */
export const $thermometers = derive<ThermometerComputed>(
  async () => (await import('./compute.ts')).computeThermometers,
);

import { derive } from '../state/derived.ts';
import type { FormsComputed } from './compute.ts';
import type { ThermometerRecordComputed } from './thermometer-rows.ts';

/** Log and plan of the batch on the bench. */
export const $forms = derive<FormsComputed>(async () => (await import('./compute.ts')).loadForms());

/** The record of the thermometers on the bench. */
export const $thermometerRecord = derive<ThermometerRecordComputed>(
  async () => (await import('./thermometer-rows.ts')).computeRecord,
);

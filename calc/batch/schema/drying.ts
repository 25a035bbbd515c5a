import * as v from 'valibot';
import { entry, list, text } from './shared.ts';

/** A fermented or dried product under a plan. */
export const drying = v.strictObject({
  kind: v.nullable(v.picklist(['fermented-sausage', 'dried-muscle'] as const)),
  approvedPlan: text,
  start: entry,
  now: entry,
  lossTarget: entry,
  startSalt: entry,
  startMoisture: entry,
  startProtein: entry,
  moisture: entry,
  protein: entry,
  waterActivity: text,
  ph: text,
  degreeHourRule: v.nullable(v.picklist(['us-fahrenheit', 'canada-celsius'] as const)),
  steps: list(v.strictObject({ id: text, temp: entry, hours: entry })),
  reachedPh53: v.nullable(v.boolean()),
  trichina: v.strictObject({
    casing: entry,
    holdTemp: entry,
    holdHours: entry,
    total: entry,
    dryIngredients: entry,
    salt: entry,
  }),
});

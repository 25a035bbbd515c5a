import * as v from 'valibot';
import { entry, list, person, text } from './shared.ts';

/** The kitchen's thermometers and their last check. */
export const thermometers = v.strictObject({
  altitude: entry,
  pressure: entry,
  tolerance: entry,
  goodFor: entry,
  thermometers: list(
    v.strictObject({
      id: text,
      name: text,
      ice: entry,
      boil: entry,
      step: entry,
      error: entry,
      checkedOn: text,
      checkedBy: person,
    }),
  ),
});

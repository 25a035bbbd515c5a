import * as v from 'valibot';
import type { ResidualNitrite } from '../../cure/index.ts';
import { entry, text } from './shared.ts';

/** What a laboratory found left in the product. */
export const residualNitrite = v.strictObject({
  found: entry,
  as: v.nullable(
    v.picklist(['sodium-nitrite', 'nitrite-ion', 'nitrite-and-nitrate-as-sodium-nitrite'] as const),
  ),
  report: text,
}) satisfies v.GenericSchema<unknown, ResidualNitrite>;

import * as v from 'valibot';
import { entrySchema, thermometersSchema } from '../batch/index.ts';
import { KITCHEN_VERSION, type Kitchen } from './kitchen.ts';

/** Longest name, and most scales and thermometers a kitchen could have. */
const MOST_TEXT = 300;
const MOST_ROWS = 60;

const text = v.pipe(v.string(), v.maxLength(MOST_TEXT));
const id = v.pipe(text, v.minLength(1));

/** Settings of a kitchen as they are kept and handed on. Strict: an unknown key is damage or a newer version. */
export const kitchenSchema = v.strictObject({
  version: v.literal(KITCHEN_VERSION),
  name: text,
  tempFirst: v.picklist(['rule', 'C', 'F'] as const),
  paper: v.picklist(['a4', 'letter'] as const),
  cureRuleSetId: v.nullable(text),
  cookRuleSetId: v.nullable(text),
  coolRuleSetId: v.nullable(text),
  scales: v.pipe(v.array(v.strictObject({ id, name: text, step: entrySchema })), v.maxLength(MOST_ROWS)),
  altitude: entrySchema,
  thermometers: v.pipe(thermometersSchema.entries.thermometers, v.maxLength(MOST_ROWS)),
  scheme: v.picklist(['system', 'light', 'dark'] as const),
}) satisfies v.GenericSchema<unknown, Kitchen>;

export type ReadKitchen =
  | { readonly ok: true; readonly kitchen: Kitchen }
  | { readonly ok: false; readonly problem: 'newer-version'; readonly version: number }
  | { readonly ok: false; readonly problem: 'damaged'; readonly path: string };

/**
 * Reads settings of unknown origin: off the device, or out of a file.
 *
 * @param raw parsed JSON; never changed
 */
export function readKitchen(raw: unknown): ReadKitchen {
  if (typeof raw === 'object' && raw !== null && 'version' in raw) {
    const { version } = raw;
    if (typeof version === 'number' && version > KITCHEN_VERSION)
      return { ok: false, problem: 'newer-version', version };
  }
  const result = v.safeParse(kitchenSchema, raw, { abortEarly: true });
  return result.success
    ? { ok: true, kitchen: result.output }
    : { ok: false, problem: 'damaged', path: v.getDotPath(result.issues[0]) ?? '' };
}

import * as v from 'valibot';
import { entry, list, stamp, text } from './shared.ts';

/** Where the finished product is kept, and how warm. */
export const storage = v.strictObject({
  listeriaGroupId: stamp,
  stays: list(v.strictObject({ id: text, temp: entry, time: entry })),
  measured: v.exactOptional(v.strictObject({ ph: entry, waterActivity: entry })),
});

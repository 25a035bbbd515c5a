import * as v from 'valibot';
import { entry, list, person, text } from './shared.ts';

const part = v.strictObject({
  id: text,
  name: text,
  role: v.picklist(['usable', 'by-product', 'waste'] as const),
  value: entry,
});

const trial = v.strictObject({
  id: text,
  on: text,
  by: person,
  purchased: entry,
  parts: v.record(text, entry),
});

/** Trim and yield tests, if somebody began one. */
export const yieldTests = v.strictObject({
  tests: list(
    v.strictObject({
      id: text,
      name: text,
      price: entry,
      priceBasis: v.picklist(['kg', 'lb'] as const),
      parts: list(part),
      trials: list(trial),
      needed: entry,
      usualLow: entry,
      usualHigh: entry,
    }),
  ),
});

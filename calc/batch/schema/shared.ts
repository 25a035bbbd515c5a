import * as v from 'valibot';
import { UNITS, type Unit } from '../../quantities/index.ts';

/** Longest text a field of a record may hold. Longer is damage or an attack, not a note. */
const MAX_TEXT = 20_000;
/** Most rows any list of a record may hold: a logger reading every second for a day and more. */
const MAX_ROWS = 120_000;

export const text = v.pipe(v.string(), v.maxLength(MAX_TEXT));
/** Marks fields that say who did something: a copy for other people leaves them out. */
type Holds = 'person' | 'signatures';
const holds = (what: Holds) => ({ holds: what });

/** Name or initials of a person. Every such field of the record is of this kind. */
export const person = v.pipe(text, v.metadata(holds('person')));
/** A list of what persons signed, said or changed: it says nothing without them. */
export const signatures = <T extends v.GenericSchema>(row: T) =>
  v.pipe(v.array(row), v.maxLength(MAX_ROWS), v.metadata(holds('signatures')));
/** A text that may be absent: a moment, an id. */
export const stamp = v.nullable(text);
export const list = <T extends v.GenericSchema>(item: T) => v.pipe(v.array(item), v.maxLength(MAX_ROWS));

/** A number field as a person left it. */
export const entry = v.strictObject({
  text,
  unit: v.picklist(Object.keys(UNITS) as Unit[]),
  origin: v.picklist(['entered', 'default'] as const),
});

/** What a line does in the mix. */
export const linePart = v.picklist([
  ...(['lean', 'fat', 'liver', 'offal', 'panade', 'egg', 'liquid'] as const),
  ...(['garnish', 'seasoning', 'salt', 'curing-salt', 'lining'] as const),
]);

/** Figures off a pack. */
export const declared = v.strictObject({ salt: entry, fat: entry, protein: entry, water: entry });

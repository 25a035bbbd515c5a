import {
  type BlendItem,
  doseOf,
  type LooseSpice,
  SPICES,
  type SpiceForm,
  spiceOf,
} from '@larderwright/calc/seasoning';
import type { Choice } from '../parts/choice-field.tsx';
import { SPICE_FORM_NAMES } from '../words/seasoning.ts';

/** What a row is called: the kitchen's own word, or the table's. */
export function spiceName({ name, spiceId }: Pick<BlendItem, 'name' | 'spiceId'>): string {
  return name.trim() || (spiceOf(spiceId)?.name ?? '');
}

/** The dose table as a list to choose from, by name. */
export const SPICE_CHOICES: readonly Choice[] = SPICES.map(({ id, name }) => ({
  value: id,
  label: name,
})).toSorted((a, b) => a.label.localeCompare(b.label, 'en'));

const FORMS = Object.keys(SPICE_FORM_NAMES) as SpiceForm[];

/** Forms a spice is dosed in. One of the kitchen's own may be any. The form it has stays in the list. */
export function formChoices({ spiceId, form }: Pick<BlendItem, 'spiceId' | 'form'>): Choice[] {
  return FORMS.filter((each) => spiceId === null || each === form || doseOf(spiceId, each) !== null).map(
    (value) => ({ value, label: SPICE_FORM_NAMES[value] }),
  );
}

/** The row with another spice, in the form that spice is first dosed in if its own does not fit. */
export function withSpice<Row extends BlendItem | LooseSpice>(row: Row, id: string): Row {
  const spice = spiceOf(id || null);
  if (!spice) return { ...row, spiceId: null };
  const [first = row.form] = Object.keys(spice.doses) as SpiceForm[];
  const form = spice.doses[row.form] ? row.form : first;
  return { ...row, spiceId: spice.id, form };
}

/** Whether a row has salt of its own to declare. */
export function mayCarrySalt({ spiceId }: Pick<BlendItem, 'spiceId'>): boolean {
  return spiceId === null || spiceOf(spiceId)?.saltFraction !== null;
}

import type { BinderSlice } from '@larderwright/calc/binder';

const FIELDS: Readonly<Record<string, string>> = {
  meat: 'the meat',
  panadeLoss: 'what the panade loses, or its cooked weight',
  panadeTemp: 'the temperature of the panade',
  egg: 'the egg (0 for none)',
  cream: 'the cream (0 for none)',
  amount: 'the weight of',
  prepared: 'the weight of',
  pieceSize: 'piece, slice, mould or formula for',
};

/** An input of binders and garnish in the middle of a sentence. */
export function binderFieldName(field: string, slice: BinderSlice): string {
  const key = field.slice(field.lastIndexOf('.') + 1);
  const rows = [...slice.panadeParts, ...slice.extenders, ...slice.garnish];
  const row = rows.find(({ id }) => field.includes(`.${id}.`));
  const said = FIELDS[key] ?? key;
  return row ? `${said} ${row.name.trim() || 'something unnamed'}` : said;
}

import type { BinderSlice } from '@larderwright/calc/binder';
import * as say from '#words/binder-and-garnish/field-names.ts';

const FIELDS: Readonly<Record<string, string>> = {
  meat: say.theMeat,
  panadeLoss: say.whatPanadeLosesCookedWeight,
  panadeTemp: say.theTemperatureOfThePanade,
  egg: say.theEgg0ForNone,
  cream: say.theCream0ForNone,
  amount: say.theWeightOf,
  prepared: say.theWeightOf,
  pieceSize: say.pieceSliceMouldOrFormulaFor,
};

/** An input of binders and garnish in the middle of a sentence. */
export function binderFieldName(field: string, slice: BinderSlice): string {
  const key = field.slice(field.lastIndexOf('.') + 1);
  const rows = [...slice.panadeParts, ...slice.extenders, ...slice.garnish];
  const row = rows.find(({ id }) => field.includes(`.${id}.`));
  const said = FIELDS[key] ?? key;
  return row ? `${said} ${row.name.trim() || say.somethingUnnamed}` : said;
}

import type { BlendSlice } from '@larderwright/calc/blend';
import * as say from '#words/lean-and-fat/field-names.ts';

const NAMES: Readonly<Record<string, string>> = {
  'blend.total': say.theWeightToMake,
  'blend.fatTarget': say.theFatWanted,
  'blend.freeA': say.theFirstFreeMaterial,
  'blend.freeB': say.theSecondFreeMaterial,
  'blend.materials': say.aMaterial,
  'blend.standard.yield': say.theFinishedWeightOfWhatWent,
};

const OF_MATERIAL: Readonly<Record<string, string>> = {
  price: say.thePriceOf,
  stock: say.theStockOf,
  minShare: say.theLeastShareOf,
  maxShare: say.theMostShareOf,
  locked: say.theFixedWeightOf,
  'declared.fat': say.theFatOf,
  'declared.protein': say.theProteinOf,
  'declared.water': say.theWaterOf,
  'declared.salt': say.theSaltOf,
};

/** An input of the blend in the middle of a sentence. */
export function blendFieldName(field: string, slice: BlendSlice): string {
  const known = NAMES[field];
  if (known !== undefined) return known;
  const [, list, id = '', ...rest] = field.split('.');
  if (list === 'materials') {
    const material = slice.materials.find((each) => each.id === id);
    return `${OF_MATERIAL[rest.join('.')] ?? say.aFigureOf} ${material?.name || say.anUnnamedMaterial}`;
  }
  if (list === 'bands') return say.the(rest[0] === 'min' ? say.least : say.most, id.replaceAll('-', ' '));
  return field;
}

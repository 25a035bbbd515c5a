import { type GeleeSlice, geleeStage } from '../gelee/index.ts';
import type { CarriedFood, CarriedIngredient } from '../label/index.ts';
import { type CrustSlice, crustStage, isCrustBegun, type PasteWeights } from '../mould/index.ts';
import { entryValue } from '../quantities/index.ts';
import type { Batch } from './record.ts';

type Row = Omit<CarriedIngredient, 'massG'>;

/** Rows of the composition table a usual paste is counted by. Its fat is one row, or two in equal parts. */
const FLOUR = { ingredientId: 'flour-wheat-white', name: 'wheat flour' };
const BUTTER = { ingredientId: 'butter-unsalted', name: 'butter' };
const LARD = { ingredientId: 'lard', name: 'lard' };
/** Common practice, no source: a paste "of butter and lard" takes as much of the one as of the other. */
const FATS: Readonly<Record<string, readonly Row[]>> = {
  short: [BUTTER, LARD],
  'hot-water': [LARD],
};
/** Ethanol at 20 °C, g/mL. Source: OIML R 22 (1973), International Alcoholometric Tables; from memory. */
const ETHANOL_G_PER_ML = 0.78924;
const GELATINE_ROW = { ingredientId: 'gelatin', name: 'gelatine' };
const JELLY_ROWS: readonly string[] = ['gelatin', 'fr-gelatin'];

function pasteIngredients(paste: PasteWeights, fats: readonly Row[]): CarriedIngredient[] {
  return [
    { ...FLOUR, massG: paste.flour },
    ...fats.map((fat) => ({ ...fat, massG: paste.fat / fats.length })),
    { ingredientId: 'egg-whole', name: 'egg', massG: paste.egg },
    { ingredientId: 'water', name: 'water', massG: paste.water },
    { ingredientId: 'salt', name: 'salt', massG: paste.salt },
    { ingredientId: 'vinegar-distilled', name: 'vinegar', massG: paste.vinegar },
  ].filter(({ massG }) => massG > 0);
}

function crustOf(slice: CrustSlice, batch: Batch): CarriedFood {
  const { pastry, count, pastryTotalG, paste } = crustStage(slice, batch.mould).values;
  const fats = FATS[slice.pasteId ?? ''];
  // The sheets as cut are on the food; of what is rolled to spare nobody knows how much.
  const massG = pastry === null || count === null ? null : pastry.sheetsG * count;
  const share = massG === null || !pastryTotalG ? 1 : massG / pastryTotalG;
  return {
    id: 'crust',
    name: 'pastry',
    massG,
    ingredients:
      paste && fats ? pasteIngredients(paste, fats).map((one) => ({ ...one, massG: one.massG * share })) : [],
    complete: paste !== null && fats !== undefined,
    allergenClasses: [],
    alcoholG: null,
  };
}

function jellyOf(slice: GeleeSlice): CarriedFood {
  const { liquidMl, gelling } = geleeStage(slice).values;
  const gellingG = gelling === null ? null : (gelling.minG + gelling.maxG) / 2;
  const alcohol = entryValue('fraction', slice.alcohol);
  return {
    id: 'jelly',
    name: 'jelly',
    // A millilitre of stock is taken as a gram.
    massG: liquidMl === null || gellingG === null ? null : liquidMl + gellingG,
    ingredients:
      slice.gelling === 'gelatine' && gellingG !== null ? [{ ...GELATINE_ROW, massG: gellingG }] : [],
    // What the stock holds stands on its own recipe.
    complete: false,
    allergenClasses: slice.gelling === 'gelatine' && slice.origin === 'fish' ? ['fish'] : [],
    alcoholG: alcohol === null ? null : alcohol * 100 * ETHANOL_G_PER_ML,
  };
}

/**
 * Crust and jelly of a batch, for its label. A jelly whose gelatine stands in the formula is counted there already.
 */
export function carriedFoods(batch: Batch): CarriedFood[] {
  const { crust, gelee } = batch;
  const inFormula = batch.formula.lines.some(
    ({ ingredientId }) => ingredientId !== null && JELLY_ROWS.includes(ingredientId),
  );
  const jelly = gelee && gelee.liquid.text.trim() !== '' && !inFormula;
  return [
    ...(crust && isCrustBegun(crust) ? [crustOf(crust, batch)] : []),
    ...(jelly ? [jellyOf(gelee)] : []),
  ];
}

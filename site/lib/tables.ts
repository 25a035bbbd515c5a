import { COOL_RULE_SETS } from '@larderwright/calc/cooling';
import { COOK_RULE_SETS, type CookRuleSet, isByFat } from '@larderwright/calc/lethality';
import { allergens } from '../tables/models/allergens.ts';
import { brineStrength } from '../tables/models/brine-strength.ts';
import { casings } from '../tables/models/casings.ts';
import { conversions } from '../tables/models/conversions.ts';
import { curingSalts } from '../tables/models/curing-salts.ts';
import { defectsBySign } from '../tables/models/defects-by-sign.ts';
import { jellyStrength } from '../tables/models/jelly-strength.ts';
import { moulds } from '../tables/models/moulds.ts';
import { nitrateRules } from '../tables/models/nitrate-rules.ts';
import { parasites } from '../tables/models/parasites.ts';
import { pressLoads } from '../tables/models/press-loads.ts';
import { productFamilies } from '../tables/models/product-families.ts';
import { roundingRules } from '../tables/models/rounding-rules.ts';
import { seasoning } from '../tables/models/seasoning.ts';
import { storageTimes } from '../tables/models/storage-times.ts';
import { temperatures } from '../tables/models/temperatures.ts';
import { thermalProperties } from '../tables/models/thermal-properties.ts';
import { waterActivity } from '../tables/models/water-activity.ts';
import type { Book } from './book.ts';
import { holdWords, limitTemps, servesPhrase } from './cook-words.ts';
import { coolConditions, legWords } from './cool-words.ts';
import { CURE_TABLES, EXPRESSED_AS, WEIGHT_BASIS } from './cure-words.ts';
import type { Anchor } from './table-anchor.ts';
import { partAnchors, type TablePart } from './table-model.ts';

type Parts = readonly TablePart[];

/** Tables that are parts with rows, by the page's slug. The three of the rule sets have bodies of their own, one of them with more rows after it. */
const MODELS: Readonly<Record<string, Parts | ((book: Book) => Parts | Promise<Parts>)>> = {
  allergens,
  'brine-strength': brineStrength,
  casings,
  conversions,
  'curing-salts': curingSalts,
  'defects-by-sign': defectsBySign,
  'jelly-strength': jellyStrength,
  moulds,
  'nitrite-limits': nitrateRules,
  parasites,
  'press-loads': pressLoads,
  'product-families': productFamilies,
  'rounding-rules': roundingRules,
  seasoning,
  'storage-times': storageTimes,
  temperatures,
  'thermal-properties': thermalProperties,
  'water-activity': waterActivity,
};

/** The parts of a table of rows, or null where the page has a body of its own. */
export async function tableModel(id: string, book: Book): Promise<Parts | null> {
  const model = MODELS[id];
  return model === undefined ? null : typeof model === 'function' ? model(book) : model;
}

/** Every place of a table page that can be linked and searched. */
export async function tableAnchors(id: string, book: Book): Promise<readonly Anchor[]> {
  const rows = (await tableModel(id, book))?.flatMap(partAnchors) ?? [];
  const anchors = [...(RULE_SET_ANCHORS[id] ?? []), ...rows];
  if (anchors.length === 0)
    throw new Error(`content/tables/${id}.yaml has no rows. Add them to site/lib/tables.ts.`);
  return anchors;
}

const head = (id: string, label: string, words: readonly string[]): Anchor => ({
  id,
  label,
  words,
  isRow: false,
});
const row = (id: string, label: string, words: readonly string[]): Anchor => ({
  id,
  label,
  words,
  isRow: true,
});

function cookRows(set: CookRuleSet): Anchor[] {
  return set.limits.flatMap((limit) => {
    const { celsius, fahrenheit, printed } = limitTemps(limit);
    const label = `${celsius} (${fahrenheit})`;
    const words = [printed, set.jurisdiction, set.title].filter((part) => part !== '');
    if (isByFat(limit.hold))
      return [row(`${limit.id}-otherBirds`, `${label}, poultry by its fat`, ['hold by fat', ...words])];
    const hold = holdWords(limit.hold.printed);
    return [row(limit.id, `${label}, ${hold}`, [servesPhrase(limit), ...words])];
  });
}

const RULE_SET_ANCHORS: Readonly<Record<string, readonly Anchor[]>> = {
  'cooking-lethality': COOK_RULE_SETS.flatMap((set) => [
    head(set.id, `${set.jurisdiction}: ${set.title}`, [set.edition]),
    ...cookRows(set),
  ]),
  'cooling-windows': COOL_RULE_SETS.flatMap((set) => [
    head(set.id, `${set.jurisdiction}: ${set.title}`, coolConditions(set)),
    ...set.legs.map((leg) => {
      const { from, to, most, good } = legWords(leg);
      const words = [`at most ${most}`, good && `good practice ${good}`, set.jurisdiction, set.title];
      return row(
        `${set.id}-${leg.id}`,
        `${from} to ${to}`,
        words.filter((part) => part !== ''),
      );
    }),
  ]),
  'nitrite-limits': CURE_TABLES.flatMap(({ set, rows }) => [
    head(set.id, `${set.jurisdiction}: ${set.title}`, [set.edition]),
    ...rows.map(({ id, label, limit }) =>
      row(id, `${set.jurisdiction}: ${label}`, [
        `${limit.printed} mg/kg (ppm) as ${EXPRESSED_AS[limit.expressedAs]}, on ${WEIGHT_BASIS[limit.basis]}`,
        set.title,
      ]),
    ),
  ]),
};

import type { Params } from '../findings/index.ts';
import { isLater } from './dates.ts';
import type { LabelFinding } from './finding-ids.ts';
import type { LabelPart } from './parts.ts';
import { readCookDay } from './read-label.ts';
import type { CarriedId, LabelSlice } from './slice.ts';
import type { LabelContext, LabelValues } from './values.ts';

/** Most days a food sealed without air is kept at 3 to 8 °C with no other hurdle: Food Standards Agency, December 2020. */
export const SEALED_DAYS = 10;
/** Where those days are counted, °C: the same guidance. */
export const SEALED_STORE_C = { min: 3, max: 8 } as const;
/** Days with the day of the cook, at 5 °C or colder: United States Food Code 3-501.17. */
export const FOOD_CODE_DAYS = 7;
/** Where those days are counted, °C or colder; the law writes 41 °F beside it. The same section. */
export const FOOD_CODE_STORE_C = 5;
/** Salt on water that stands in for time: Food Standards Agency, December 2020. */
export const HURDLE_SALT = 0.035;
/** Colder is asked of this trade. Common practice, no source; the law of your place may allow more. */
const WARM_C = 5;
/** Added water above which the name says so: Regulation (EU) No 1169/2011, Annex VI part A, from memory. */
export const ADDED_WATER = 0.05;
const SEALED: readonly string[] = ['vacuum', 'modified-air', 'jar'];

/** Names under which a person may have written what the batch brings along by itself. */
const ALIKE: Readonly<Record<CarriedId, RegExp>> = {
  crust: /crust|past(?:ry|e)|dough/i,
  jelly: /jelly|gel[ée]e|aspic/i,
};

type Tell = (finding: Omit<LabelFinding, 'stage' | 'params'> & { params?: Params }) => void;

function aboutParts(values: LabelValues, tell: Tell): void {
  const real = values.parts.filter(({ massG }) => massG !== 0);
  const names = (parts: readonly LabelPart[]) => parts.map(({ ownName }) => ownName || '?').join(', ');
  for (const part of real) {
    const params = { name: part.ownName };
    const unsure = part.euAllergens.filter(({ toCheck }) => toCheck);
    if (!part.allergensTold && unsure.length > 0)
      tell({
        id: 'label.allergen-to-check',
        severity: 'caution',
        field: part.path,
        params: { ...params, allergens: unsure.map(({ name }) => name).join(', ') },
        caution: 'hidden-allergens',
      });
    else if (!part.allergensTold)
      tell({
        id: 'label.allergen-unknown',
        severity: 'caution',
        field: part.path,
        params,
        caution: 'allergens-listed',
      });
    if (part.needsMadeOf && part.madeOf === '')
      tell({
        id: 'label.made-of-unknown',
        severity: 'caution',
        field: part.path,
        params,
        caution: 'hidden-allergens',
      });
    if (part.line?.part === 'curing-salt' && part.per100.sodiumMg === null)
      tell({
        id: 'label.curing-salt-unsplit',
        severity: 'caution',
        field: part.path,
        params,
        caution: 'weigh-curing-salt',
      });
  }
  const kitchen = real.filter(({ kitchenRow }) => kitchenRow);
  if (kitchen.length > 0)
    tell({
      id: 'label.kitchen-figures',
      severity: 'caution',
      params: { count: kitchen.length, names: names(kitchen) },
      basis: 'kitchen-compositions',
    });
  if (values.nutrition) {
    const left = new Set(
      Object.values(values.nutrition).flatMap(({ value, unknownLines }) =>
        value === null ? [] : unknownLines,
      ),
    );
    const small = real.filter(({ id }) => left.has(id));
    if (small.length > 0)
      tell({
        id: 'label.small-blanks',
        severity: 'note',
        params: { count: small.length, names: names(small) },
      });
  }
}

function aboutMeat(slice: LabelSlice, values: LabelValues, tell: Tell): void {
  for (const group of values.meat) {
    const asked = values.parts.some((part) => group.lineIds.includes(part.id) && part.stressed);
    const { content, name } = group;
    if (!content && asked)
      tell({
        id: 'label.meat-limit-unknown',
        severity: 'caution',
        field: 'label.lines',
        params: { name, what: [...new Set(group.unknown.map(({ what }) => what))].join(', ') },
        basis: 'eu-1169-2011',
      });
    if (content && content.declarableFraction < 1)
      tell({
        id: 'label.over-meat-limits',
        severity: 'note',
        field: 'label.lines',
        params: {
          name,
          declarablePercent: content.declarableFraction * 100,
          fatPercent: content.excessFatFraction * 100,
          tissuePercent: content.excessTissueFraction * 100,
        },
        basis: 'eu-1169-2011',
      });
  }
  if (values.quantities?.some(({ declare }) => declare.as === 'grams-per-100'))
    tell({
      id: 'label.quantities-in-grams',
      severity: 'note',
      field: 'label.lines',
      basis: 'eu-1169-2011-label',
    });
  const { addedWaterFraction: water } = values;
  if (slice.looksLikeCut && water !== null && water > ADDED_WATER)
    tell({
      id: 'label.added-water',
      severity: 'caution',
      field: 'label.name',
      params: { percent: water * 100 },
      basis: 'eu-1169-2011-label',
      caution: 'reserved-names',
    });
  const meats = values.meat.filter(({ massG }) => massG !== 0).map(({ name }) => name);
  const legal = slice.name.toLocaleLowerCase('en');
  if (
    legal.trim() !== '' &&
    meats.length > 0 &&
    !meats.some((name) => legal.includes(name.toLocaleLowerCase('en')))
  )
    tell({
      id: 'label.name-without-meat',
      severity: 'note',
      field: 'label.name',
      params: { names: meats.join(', ') },
      caution: 'reserved-names',
    });
}

function aboutMass(slice: LabelSlice, context: LabelContext, values: LabelValues, tell: Tell): void {
  if (values.filledFrom === 'bowl' && values.finishedG !== null && slice.loss !== 'nothing')
    tell({ id: 'label.whole-bowl-filled', severity: 'note', field: 'label.filled' });
  const { ingoingG, finishedG } = values;
  if (ingoingG !== null && finishedG !== null && finishedG > ingoingG * 1.001)
    tell({
      id: 'label.heavier-than-mix',
      severity: 'caution',
      field: 'label.filled',
      params: { ingoingG, finishedG },
    });
  if (slice.loss === 'juices') tell({ id: 'label.juices-lost', severity: 'caution', field: 'label.loss' });
  for (const { id, name, carried } of values.parts) {
    if (carried === null) continue;
    const twin = values.parts.find(
      (other) =>
        other.line === null && other.carried === null && other.massG !== 0 && ALIKE[carried].test(other.name),
    );
    if (twin)
      tell({
        id: 'label.told-twice',
        severity: 'caution',
        field: `label.extras.${id}`,
        params: { name, twin: twin.name },
      });
  }
  if (context.curedElsewhere === true)
    tell({
      id: 'label.cure-not-listed',
      severity: 'caution',
      field: 'label.extras',
      params: { nitrite: context.nitriteElsewhere === true ? 'yes' : 'no' },
      ...(context.nitriteElsewhere === true ? { caution: 'nitrite-not-for-infants' } : {}),
    });
  if (uncounted(context, values))
    tell({
      id: 'label.crust-not-counted',
      severity: 'caution',
      field: 'label.extras',
      params: { what: context.formula.familyId === 'en-croute' ? 'crust' : 'lining' },
      caution: 'allergens-listed',
    });
}

/** A crust or a lining that is eaten and stands nowhere in the list. */
export function uncounted(context: LabelContext, values: Pick<LabelValues, 'parts'>): boolean {
  // A jelly alone is neither crust nor lining.
  const extras = values.parts.some(({ line, carried }) => line === null && carried !== 'jelly');
  const lining = values.parts.some(({ line }) => line?.part === 'lining');
  return !extras && (context.formula.familyId === 'en-croute' || (context.foodLining && !lining));
}

function aboutSafety(slice: LabelSlice, context: LabelContext, values: LabelValues, tell: Tell): void {
  const { lifeDays, warnings } = values;
  if (slice.audience === 'susceptible' && warnings.includes('listeria'))
    tell({
      id: 'label.susceptible-audience',
      severity: 'stop',
      field: 'label.audience',
      caution: 'listeria-in-pate',
    });
  if (slice.audience === 'under-threes' && warnings.includes('nitrite-infants'))
    tell({
      id: 'label.nitrite-for-infants',
      severity: 'stop',
      field: 'label.audience',
      caution: 'nitrite-not-for-infants',
    });
  if (values.nitrite)
    tell({
      id: 'label.nitrite-named',
      severity: 'note',
      field: 'label.lines',
      caution: 'nitrite-not-for-infants',
    });
  if (slice.dateKind === 'best-before' && context.formula.familyId !== 'dried-muscle')
    tell({
      id: 'label.best-before',
      severity: 'stop',
      field: 'label.dateKind',
      caution: 'use-by-not-best-before',
    });
  const sealed = slice.pack !== null && SEALED.includes(slice.pack);
  if (sealed && lifeDays !== null && lifeDays > SEALED_DAYS) {
    const salt = context.formulaValues.mix.saltOnWaterMinFraction;
    if (slice.hurdle === null)
      tell({
        id: 'label.sealed-too-long',
        severity: 'stop',
        field: 'label.life',
        params: { days: lifeDays, limitDays: SEALED_DAYS },
        caution: 'vacuum-life-needs-a-hurdle',
      });
    else if (slice.hurdle === 'salt-3-5' && (salt === null || salt < HURDLE_SALT))
      tell({
        id: 'label.hurdle-salt-short',
        severity: 'stop',
        field: 'label.hurdle',
        params: {
          known: salt === null ? 'no' : 'yes',
          saltPercent: (salt ?? 0) * 100,
          limitPercent: HURDLE_SALT * 100,
        },
        caution: 'vacuum-life-needs-a-hurdle',
      });
  }
  if (slice.market === 'us' && lifeDays !== null && lifeDays > FOOD_CODE_DAYS)
    tell({
      id: 'label.past-seven-days',
      severity: 'caution',
      field: 'label.life',
      params: { days: lifeDays, limitDays: FOOD_CODE_DAYS },
      caution: 'use-by-not-best-before',
    });
  if (values.storeAtC !== null && values.storeAtC > WARM_C)
    tell({
      id: 'label.stored-warm',
      severity: 'caution',
      field: 'label.storeAt',
      params: { storeC: values.storeAtC, limitC: WARM_C },
      caution: 'listeria-in-pate',
    });
  const day = readCookDay(slice, context);
  if (day.logged !== null && day.typed !== null && day.logged !== day.typed)
    tell({
      id: 'label.two-cook-dates',
      severity: 'caution',
      field: 'label.cookedOn',
      params: { logged: day.logged, typed: day.typed },
    });
  if (values.cookedOn !== null && isLater(slice.packedOn.trim(), values.cookedOn) === true)
    tell({
      id: 'label.packing-moves-nothing',
      severity: 'note',
      field: 'label.packedOn',
      params: { packedOn: slice.packedOn.trim(), cookedOn: values.cookedOn },
      caution: 'use-by-not-best-before',
    });
}

/** All that a label has to say, in the order of the page. */
export function labelFindings(slice: LabelSlice, context: LabelContext, values: LabelValues): LabelFinding[] {
  const found: LabelFinding[] = [];
  const tell: Tell = (finding) => found.push({ stage: 'label', params: {}, ...finding });
  aboutParts(values, tell);
  aboutMeat(slice, values, tell);
  aboutMass(slice, context, values, tell);
  aboutSafety(slice, context, values, tell);
  return found;
}

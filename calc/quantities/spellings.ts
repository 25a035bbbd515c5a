import type { Unit } from './entry.ts';
import type { QuantityKind } from './units.ts';

type Spellings = Readonly<Partial<Record<Unit, readonly string[]>>>;

/** What people write for each unit, lower case, without spaces or final full stop. `gr` is left out: it may be grain. */
const SPELLINGS: Readonly<Record<QuantityKind, Spellings>> = {
  mass: {
    mg: ['mg', 'milligram', 'milligrams', 'milligramme', 'milligrammes'],
    g: ['g', 'gm', 'gms', 'gram', 'grams', 'gramme', 'grammes'],
    kg: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogramme', 'kilogrammes'],
    oz: ['oz', 'ozs', 'ounce', 'ounces'],
    lb: ['lb', 'lbs', 'pound', 'pounds'],
  },
  length: {
    mm: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
    cm: ['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'],
    m: ['m', 'metre', 'metres', 'meter', 'meters'],
    ft: ['ft', 'foot', 'feet', "'", '′'],
    in: ['in', 'ins', 'inch', 'inches', '"', '″', '”'],
  },
  volume: {
    mL: ['ml', 'cc', 'cm3', 'cm³', 'millilitre', 'millilitres', 'milliliter', 'milliliters'],
    cL: ['cl', 'centilitre', 'centilitres', 'centiliter', 'centiliters'],
    dL: ['dl', 'decilitre', 'decilitres', 'deciliter', 'deciliters'],
    L: ['l', 'litre', 'litres', 'liter', 'liters'],
  },
  temperature: {
    C: ['°c', 'c', '℃', 'degc', 'degreec', 'degreesc', 'celsius', '°celsius', 'degreescelsius'],
    F: ['°f', 'f', '℉', 'degf', 'degreef', 'degreesf', 'fahrenheit', '°fahrenheit', 'degreesfahrenheit'],
  },
  'temperature-difference': {
    dC: ['°c', 'c', '℃', 'k', 'degc', 'degreesc', 'celsius', 'degreescelsius'],
    dF: ['°f', 'f', '℉', 'degf', 'degreesf', 'fahrenheit', 'degreesfahrenheit'],
  },
  pressure: {
    kPa: ['kpa', 'kilopascal', 'kilopascals'],
    hPa: ['hpa', 'mbar', 'millibar', 'millibars', 'hectopascal', 'hectopascals'],
    psi: ['psi'],
  },
  time: {
    d: ['d', 'day', 'days'],
    h: ['h', 'hr', 'hrs', 'hour', 'hours'],
    min: ['min', 'mins', 'm', 'minute', 'minutes'],
    s: ['s', 'sec', 'secs', 'second', 'seconds'],
  },
  fraction: {
    '%': ['%', '％', 'percent', 'pct'],
    'g/kg': ['g/kg', '‰'],
  },
  ppm: { ppm: ['ppm', 'mg/kg'] },
  density: { 'g/mL': ['g/ml', 'g/cm3', 'g/cm³', 'g/cc', 'kg/l'] },
  count: { count: ['x', 'pc', 'pcs', 'piece', 'pieces', 'portion', 'portions', 'mould', 'moulds'] },
  ratio: {},
  money: { money: ['cu', '€', '$', '£', '¥'] },
};

/** Kitchen measures that differ from country to country and from hand to hand. */
const SPOONS_AND_CUPS = new Set(
  'tsp tsps teaspoon teaspoons tbsp tbsps tablespoon tablespoons cup cups pinch pinches dash dashes'.split(
    ' ',
  ),
);

export type SpelledUnit =
  | { readonly unit: Unit; readonly kind: QuantityKind }
  | { readonly unit: null; readonly spoon: boolean };

/** Fold the ways of writing a degree sign, drop spaces and a final full stop, and take no notice of case. */
function fold(text: string): string {
  return text.toLowerCase().replaceAll(/\s+/g, '').replaceAll(/[º˚]/g, '°').replace(/\.$/, '');
}

function lookUp(folded: string, kind: QuantityKind): Unit | null {
  for (const [unit, words] of Object.entries(SPELLINGS[kind]) as [Unit, readonly string[]][]) {
    if (words.includes(folded)) return unit;
  }
  return null;
}

/** The unit a written word means in a field of this kind; failing that, the kind it does belong to. */
export function spelledUnit(text: string, kind: QuantityKind): SpelledUnit {
  const folded = fold(text);
  const own = lookUp(folded, kind);
  if (own) return { unit: own, kind };
  for (const other of Object.keys(SPELLINGS) as QuantityKind[]) {
    const unit = lookUp(folded, other);
    if (unit) return { unit, kind: other };
  }
  return { unit: null, spoon: SPOONS_AND_CUPS.has(folded) };
}

import type { Finding, Params, Severity } from '../findings/index.ts';
import { entryValue } from '../quantities/index.ts';
import type { SourceId } from '../sources/index.ts';
import { POUR } from './fill-under-crust.ts';
import type { GeleeFindingId } from './finding-ids.ts';
import type { GeleeSlice } from './slice.ts';
import { STRONGEST_FRACTION } from './strength.ts';
import type { GeleeValues } from './values.ts';
import { SUGAR_ABOVE_FRACTION } from './weakening.ts';

/** Food gelatine, bloom. Source: `gelatine-bloom-unit`. */
export const FOOD_BLOOM = { min: 125, max: 300 } as const;
/** Rules this near each other need no word, share of the weight. */
const RULES_AGREE = 0.005;
const NOISE = 1e-9;

type GeleeFinding = Finding<GeleeFindingId>;
type Tell = (
  id: GeleeFindingId,
  severity: Severity,
  field: string,
  params?: Params,
  more?: { readonly basis?: SourceId; readonly caution?: string },
) => void;

/** What is worth telling about a jelly. */
export function geleeFindings(slice: GeleeSlice, values: GeleeValues): GeleeFinding[] {
  const found: GeleeFinding[] = [];
  const tell: Tell = (id, severity, field, params = {}, { basis = 'trade-gelee-habits', caution } = {}) =>
    found.push({
      id,
      severity,
      stage: 'gelee',
      field: `gelee.${field}`,
      params,
      basis,
      ...(caution ? { caution } : {}),
    });

  if (slice.gelling === 'agar') tell('gelee.agar-differs', 'note', 'gelling');
  else gelatineFindings(slice, values, tell);
  const { strengthFraction, wanted } = values;
  if (
    strengthFraction !== null &&
    (strengthFraction < wanted.minFraction - NOISE || strengthFraction > wanted.maxFraction + NOISE)
  )
    tell('gelee.outside-use', 'note', 'strength', {
      strengthFraction,
      minFraction: wanted.minFraction,
      maxFraction: wanted.maxFraction,
    });
  pouringFindings(slice, tell);
  return found;
}

function gelatineFindings(slice: GeleeSlice, values: GeleeValues, tell: Tell): void {
  const { conversion, bloom, weakening, strengthFraction, addedFraction } = values;
  if (conversion && Math.abs(conversion.differenceG) > RULES_AGREE * conversion.squareRootG)
    tell(
      'gelee.rules-differ',
      'note',
      'rule',
      { ...conversion, rule: slice.rule },
      { basis: slice.rule === 'linear' ? 'gelatine-linear-rule' : 'gmia-gelatin-handbook' },
    );
  if (slice.form === 'sheet')
    tell('gelee.sheets-not-by-count', 'note', 'sheetGrade', {}, { basis: 'gelatine-linear-rule' });
  if (bloom !== null && (bloom < FOOD_BLOOM.min || bloom > FOOD_BLOOM.max))
    tell(
      'gelee.bloom-unusual',
      'caution',
      'bloom',
      { bloom, ...FOOD_BLOOM },
      { basis: 'gelatine-bloom-unit' },
    );
  if (slice.rawFruit.length > 0)
    tell('gelee.enzyme-fruit', 'caution', 'rawFruit', { fruit: slice.rawFruit.join(', ') });
  if (weakening.acid || weakening.alcohol)
    tell('gelee.weakened', 'note', weakening.acid ? 'ph' : 'alcohol', {
      acid: weakening.acid ? 1 : 0,
      alcohol: weakening.alcohol ? 1 : 0,
      minFraction: weakening.min - 1,
      maxFraction: weakening.max - 1,
    });
  const sugar = entryValue('fraction', slice.sugar);
  if (sugar !== null && sugar > SUGAR_ABOVE_FRACTION)
    tell('gelee.sugar-firms', 'note', 'sugar', { sugarFraction: sugar });
  if (strengthFraction !== null && strengthFraction > STRONGEST_FRACTION + NOISE)
    tell('gelee.too-strong', 'note', 'strength', { strengthFraction, mostFraction: STRONGEST_FRACTION });
  if (addedFraction === 0) tell('gelee.stock-sets-enough', 'note', 'naturalSet');
  if (slice.origin === 'unknown' && slice.liquid.text.trim() !== '')
    tell('gelee.origin-unknown', 'note', 'origin', {}, { caution: 'allergens-listed' });
  if (slice.origin === 'fish')
    tell('gelee.fish-gelatine', 'caution', 'origin', {}, { caution: 'allergens-listed' });
}

/** Jelly poured round or into something cooked. */
function pouringFindings(slice: GeleeSlice, tell: Tell): void {
  const pourC = entryValue('temperature', slice.pour);
  const coreC = entryValue('temperature', slice.core);
  const cavityMl = entryValue('volume', slice.cavity);
  if (pourC !== null && pourC > POUR.meltsFatC)
    tell('gelee.pour-too-hot', 'caution', 'pour', { pourC, mostC: POUR.meltsFatC, ...POUR });
  if (coreC !== null && coreC > POUR.coreMostC)
    tell('gelee.core-too-hot', 'caution', 'core', { coreC, mostC: POUR.coreMostC });
  if (cavityMl === null && pourC === null && coreC === null) return;
  tell('gelee.adds-heat', 'caution', 'pour', {}, { caution: 'cooling-clock' });
  tell('gelee.after-the-cook', 'caution', 'cavity', {}, { caution: 'after-the-cook' });
}

import type { Finding, Params, Severity } from '../findings/index.ts';
import { wallMin } from '../plan/index.ts';
import type { SeasoningContext } from './context.ts';
import type { SeasoningFindingId } from './finding-ids.ts';
import { doseOf } from './forms.ts';
import type { SeasoningSlice } from './slice.ts';
import { SPICE_SOURCE, spiceOf } from './spices.ts';
import type { SeasoningValues, SeasoningWeight } from './values.ts';

/** Spices a blend is still weighed with some care in. Common practice, no source. */
const MANY_SPICES = 14;
/** Ground spice is tired after so long, closed and dark. Common practice, no source. */
export const GROUND_KEEPS_DAYS = 183;
const MIN_PER_DAY = 1440;
/** The noise of decimal doses. */
const NOISE = 1e-9;

type SeasoningFinding = Finding<SeasoningFindingId>;

/** What is worth telling about the seasoning of a batch. */
export function seasoningFindings(
  slice: SeasoningSlice,
  { today }: SeasoningContext,
  values: SeasoningValues,
): SeasoningFinding[] {
  const found: SeasoningFinding[] = [];
  const tell = (
    id: SeasoningFindingId,
    severity: Severity,
    field: string,
    params: Params = {},
    caution?: string,
  ) =>
    found.push({
      id,
      severity,
      stage: 'seasoning',
      field: `seasoning.${field}`,
      params,
      basis: SPICE_SOURCE,
      ...(caution ? { caution } : {}),
    });

  const rows = placedRows(slice, values);
  ceilingFindings(rows, values, tell);
  for (const { path, name, weight } of rows) {
    const { dilution, weighable, toWeighG, tasteFromG, massG } = weight;
    if (dilution) {
      tell('seasoning.diluted-in-salt', 'note', path, { name, ...dilutionParams(dilution) });
      if (dilution.stillTooSmall)
        tell('seasoning.still-too-small', 'caution', path, { name, useG: dilution.useG });
    } else if (weighable === false && toWeighG !== null)
      tell('seasoning.too-small-to-weigh', 'caution', path, { name, massG: toWeighG });
    if (tasteFromG && massG !== null)
      tell('seasoning.taste-aromatics', 'note', path, {
        name,
        times: values.timesTasted ?? 0,
        massG,
        ...tasteFromG,
      });
    byNature(weight, path, name, tell);
  }
  for (const blend of slice.blends) {
    const path = `blends.${blend.id}`;
    if (blend.items.length > MANY_SPICES)
      tell('seasoning.many-spices', 'note', path, { count: blend.items.length, most: MANY_SPICES });
    const ground = wallMin(blend.groundOn);
    const now = wallMin(today);
    if (ground !== null && now !== null && (now - ground) / MIN_PER_DAY > GROUND_KEEPS_DAYS)
      tell('seasoning.old-ground', 'note', `${path}.groundOn`, {
        name: blend.name,
        days: Math.floor((now - ground) / MIN_PER_DAY),
      });
  }
  if (values.euAllergens.length + values.usAllergens.length > 0)
    tell(
      'seasoning.allergens',
      'caution',
      'blends',
      {
        eu: values.euAllergens.map(({ name }) => name).join(', '),
        us: values.usAllergens.map(({ name }) => name).join(', '),
      },
      'allergens-listed',
    );
  if (values.allergensUnknown.length > 0)
    tell(
      'seasoning.allergens-unknown',
      'caution',
      'blends',
      { count: values.allergensUnknown.length },
      'allergens-listed',
    );
  return found;
}

type Tell = (
  id: SeasoningFindingId,
  severity: Severity,
  field: string,
  params?: Params,
  caution?: string,
) => void;

interface PlacedRow {
  readonly path: string;
  readonly name: string;
  readonly weight: SeasoningWeight;
}

/** Every row with its place in the slice and the name a person knows it by. */
function placedRows(slice: SeasoningSlice, values: SeasoningValues): PlacedRow[] {
  const place = (path: string, own: string, weight: SeasoningWeight): PlacedRow => ({
    path,
    name: own.trim() || (spiceOf(weight.spiceId)?.name ?? ''),
    weight,
  });
  return [
    ...values.blends.flatMap(({ blendId, items }) =>
      items.map((weight) => {
        const item = slice.blends.find(({ id }) => id === blendId)?.items.find(({ id }) => id === weight.id);
        return place(`blends.${blendId}.items.${weight.id}.parts`, item?.name ?? '', weight);
      }),
    ),
    ...values.loose.map((weight) =>
      place(`loose.${weight.id}.dose`, slice.loose.find(({ id }) => id === weight.id)?.name ?? '', weight),
    ),
  ];
}

function ceilingFindings(rows: readonly PlacedRow[], { totals }: SeasoningValues, tell: Tell): void {
  for (const { spiceId, ceilingShare, gPerKgByForm } of totals) {
    const mine = rows.filter(({ weight }) => weight.spiceId === spiceId);
    const path = mine[0]?.path ?? 'blends';
    const loose = mine.length === 1 && mine[0]?.weight.shareFraction === null;
    const name = spiceOf(spiceId)?.name ?? spiceId;
    const forms = Object.entries(gPerKgByForm);
    const [form, gPerKg] = forms[0] ?? ['ground', null];
    const dose = doseOf(spiceId, form as SeasoningWeight['form']);
    if (ceilingShare === null) tell('seasoning.no-ceiling', 'note', path, { name });
    else if (ceilingShare > 1 + NOISE)
      tell('seasoning.over-ceiling', 'caution', path, {
        name,
        ceilingShare,
        sources: mine.length,
        forms: forms.length,
        gPerKg: gPerKg ?? 0,
        ceilingGPerKg: dose?.ceilingGPerKg ?? 0,
      });
    // A spice of a blend may well stand below the background by itself.
    else if (loose && dose && gPerKg && gPerKg < dose.lowGPerKg - NOISE)
      tell('seasoning.outside-dose', 'note', path, {
        name,
        gPerKg,
        lowGPerKg: dose.lowGPerKg,
        typicalGPerKg: dose.typicalGPerKg,
      });
  }
}

function dilutionParams({
  spiceG,
  saltG,
  useG,
  saltInBatchG,
}: NonNullable<SeasoningWeight['dilution']>): Params {
  return { spiceG, saltG, useG, saltInBatchG };
}

/** Traps that hang on what a spice is. */
function byNature(
  { spiceId, form, carriedSaltG, massG }: SeasoningWeight,
  path: string,
  name: string,
  tell: Tell,
) {
  if (massG === 0) return;
  if (spiceId === 'pink-peppercorn')
    tell('seasoning.cross-reaction', 'caution', path, { name }, 'allergens-listed');
  if (spiceId === 'celery-seed') tell('seasoning.natural-nitrate', 'note', path, { name });
  if (spiceId === 'garlic' && form === 'fresh')
    tell('seasoning.raw-garlic', 'caution', path, { name }, 'sealed-without-air');
  if (spiceId === 'ginger' && form === 'fresh') tell('seasoning.raw-ginger', 'caution', path, { name });
  if (carriedSaltG && carriedSaltG.max > 0)
    tell('seasoning.carries-salt', 'note', path, {
      name,
      minG: carriedSaltG.min,
      maxG: carriedSaltG.max,
    });
}

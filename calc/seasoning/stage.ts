import type { MissingInput, StageResult } from '../findings/index.ts';
import { joinAllergens } from '../ingredients/index.ts';
import { compensatedSum, entryValue } from '../quantities/index.ts';
import { blendParts } from './blend-parts.ts';
import { spiceTotals } from './ceilings.ts';
import type { SeasoningContext } from './context.ts';
import type { SeasoningFindingId } from './finding-ids.ts';
import { seasoningFindings } from './findings.ts';
import {
  doseGPerKg,
  isUntouchedItem,
  isUntouchedLoose,
  readShared,
  type SeasoningContextValues,
  weightOf,
} from './read-seasoning.ts';
import type { SeasoningBlend, SeasoningSlice } from './slice.ts';
import { spiceOf } from './spices.ts';
import type { BlendWeights, SeasoningValues, SeasoningWeight } from './values.ts';
import { LEAST_SPICE_STEPS } from './weigh-small.ts';

/**
 * Grams of every seasoning: blends by parts and loose ones, on the total mix; each spice held against its ceiling with
 * all its sources together; what the scale cannot show; salt and allergens carried. Quality only.
 */
export function seasoningStage(
  slice: SeasoningSlice,
  context: SeasoningContext,
): StageResult<SeasoningValues, SeasoningFindingId> {
  const shared = readShared(slice, context.totalG);
  const blends = slice.blends.map((blend) => blendWeights(blend, shared));
  const loose = slice.loose
    .filter((row) => !isUntouchedLoose(row))
    .map((row) => weightOf(row, doseGPerKg(row.dose), null, 1, shared));
  const all = [...blends.flatMap(({ items }) => items), ...loose];
  const rows = all.flatMap(({ spiceId }) => spiceOf(spiceId) ?? []);
  const values: SeasoningValues = {
    batchG: shared.batchG,
    timesTasted: shared.timesTasted,
    blends,
    loose,
    totalG: sumOrNull(all.map(({ massG }) => massG)),
    totals: spiceTotals(all),
    dilutionSaltG: compensatedSum(all.map(({ dilution }) => dilution?.saltInBatchG ?? 0)),
    carriedSaltG: carriedSalt(all),
    euAllergens: joinAllergens(rows.map(({ euAllergens }) => euAllergens)),
    usAllergens: joinAllergens(rows.map(({ usAllergens }) => usAllergens)),
    allergensUnknown: all.filter(({ spiceId }) => spiceOf(spiceId) === undefined).map(({ id }) => id),
  };
  return {
    values,
    findings: seasoningFindings(slice, context, values),
    verdicts: [],
    missing: seasoningMissing(slice, values),
  };
}

function blendWeights(blend: SeasoningBlend, shared: SeasoningContextValues): BlendWeights {
  const items = blend.items.filter((item) => !isUntouchedItem(item));
  const parts = items.map((item) => entryValue('ratio', item.parts));
  const dose = doseGPerKg(blend.dose);
  const known = parts.filter((part) => part !== null);
  // Shares and g/kg hang on parts and dose alone; the batch's mass comes in by the row.
  const split = known.length === items.length ? blendParts(known, dose ?? 0, 0) : null;
  const stockTimes = entryValue('ratio', blend.stockTimes);
  const weights = items.map((item, index) => {
    const part = split?.[index];
    const gPerKg = part === undefined || dose === null ? null : part.gPerKg;
    return weightOf(item, gPerKg, part?.shareFraction ?? null, stockTimes, shared);
  });
  const massG = split === null ? null : sumOrNull(weights.map((weight) => weight.massG));
  return {
    blendId: blend.id,
    doseGPerKg: dose,
    massG,
    stockTimes,
    stockG: massG === null || stockTimes === null ? null : massG * stockTimes,
    stockTimesNeeded: stockNeeded(weights, shared.readabilityG),
    items: weights,
  };
}

/** Float noise of dividing masses. */
const NOISE = 1e-9;

function stockNeeded(items: readonly SeasoningWeight[], readabilityG: number | null): number | null {
  const masses = items.map(({ massG }) => massG);
  if (readabilityG === null || masses.length === 0 || masses.some((massG) => massG === null)) return null;
  const least = Math.min(...masses.flatMap((massG) => (massG ? [massG] : [])));
  if (!Number.isFinite(least)) return null;
  return Math.max(1, Math.ceil(((LEAST_SPICE_STEPS * readabilityG) / least) * (1 - NOISE)));
}

function carriedSalt(all: readonly SeasoningWeight[]): SeasoningValues['carriedSaltG'] {
  const known = all.flatMap(({ carriedSaltG }) => carriedSaltG ?? []);
  if (known.length < all.length) return null;
  return {
    min: compensatedSum(known.map(({ min }) => min)),
    max: compensatedSum(known.map(({ max }) => max)),
  };
}

function sumOrNull(values: readonly (number | null)[]): number | null {
  const known = values.filter((value) => value !== null);
  return known.length === values.length ? compensatedSum(known) : null;
}

function seasoningMissing(slice: SeasoningSlice, { batchG, blends, loose }: SeasoningValues): MissingInput[] {
  const missing: MissingInput[] = [];
  const need = (known: unknown, field: string) => {
    if (known === null) missing.push({ field: `seasoning.${field}`, neededFor: 'seasoning.weights' });
  };
  if (blends.length + loose.length > 0) {
    need(batchG, 'batch');
    need(entryValue('mass', slice.scaleReadability) || null, 'scaleReadability');
  }
  for (const blend of slice.blends) {
    need(doseGPerKg(blend.dose), `blends.${blend.id}.dose`);
    need(entryValue('ratio', blend.stockTimes), `blends.${blend.id}.stockTimes`);
    for (const item of blend.items) {
      if (!isUntouchedItem(item))
        need(entryValue('ratio', item.parts), `blends.${blend.id}.items.${item.id}.parts`);
    }
  }
  for (const row of slice.loose) {
    if (!isUntouchedLoose(row)) need(doseGPerKg(row.dose), `loose.${row.id}.dose`);
  }
  return missing;
}

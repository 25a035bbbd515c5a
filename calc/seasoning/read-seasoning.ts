import { nearestStepG } from '../cure/index.ts';
import { entryValue, readEntry } from '../quantities/index.ts';
import { wholeToGrindG } from './forms.ts';
import type { BlendItem, LooseSpice, SeasoningSlice } from './slice.ts';
import { spiceOf } from './spices.ts';
import { strongAromaticG } from './strong-aromatics.ts';
import type { SeasoningWeight } from './values.ts';
import { diluteInSalt, spiceWeighable } from './weigh-small.ts';

const G_PER_KG = 1000;

/** Fields all rows share. */
export interface SeasoningContextValues {
  readonly batchG: number | null;
  readonly readabilityG: number | null;
  readonly grindingLoss: number | null;
  readonly timesTasted: number | null;
  readonly dilute: boolean;
}

/** Reads what the whole slice shares. */
export function readShared(slice: SeasoningSlice, totalG: number | null): SeasoningContextValues {
  const batch = readEntry('mass', slice.batch);
  return {
    batchG: batch.state === 'blank' ? totalG : batch.state === 'ok' ? batch.value : null,
    readabilityG: entryValue('mass', slice.scaleReadability) || null,
    grindingLoss: entryValue('fraction', slice.grindingLoss),
    timesTasted: entryValue('ratio', slice.timesTasted),
    dilute: slice.diluteInSalt,
  };
}

/** A dose typed in g/kg, as the number of g/kg. */
export function doseGPerKg(dose: SeasoningSlice['loose'][number]['dose']): number | null {
  const fraction = entryValue('fraction', dose);
  return fraction === null ? null : fraction * G_PER_KG;
}

/** A row nobody has begun. */
export function isUntouchedItem({ spiceId, name, parts }: BlendItem): boolean {
  return spiceId === null && name.trim() === '' && parts.text.trim() === '';
}

export function isUntouchedLoose({ spiceId, name, dose }: LooseSpice): boolean {
  return spiceId === null && name.trim() === '' && dose.text.trim() === '';
}

/** Salt a row carries, g: typed from the pack, else the table's band, else none. Unknown stays unknown. */
function carriedSalt(row: BlendItem | LooseSpice, massG: number | null): SeasoningWeight['carriedSaltG'] {
  if (massG === null) return null;
  const typed = readEntry('fraction', row.salt);
  if (typed.state === 'bad') return null;
  if (typed.state === 'ok') return { min: typed.value * massG, max: typed.value * massG };
  const band = spiceOf(row.spiceId)?.saltFraction ?? { min: 0, max: 0 };
  return { min: band.min * massG, max: band.max * massG };
}

/** The dilution of what is weighed, with the salt that reaches this batch of it. */
function dilutionOf(toWeighG: number, stockTimes: number, readabilityG: number): SeasoningWeight['dilution'] {
  const dilution = diluteInSalt(toWeighG, readabilityG);
  return dilution && { ...dilution, saltInBatchG: dilution.saltInBatchG / stockTimes };
}

/** One seasoning as it is weighed. */
export function weightOf(
  row: BlendItem | LooseSpice,
  gPerKg: number | null,
  shareFraction: number | null,
  stockTimes: number | null,
  { batchG, readabilityG, grindingLoss, timesTasted, dilute }: SeasoningContextValues,
): SeasoningWeight {
  const massG = gPerKg === null || batchG === null ? null : (gPerKg * batchG) / G_PER_KG;
  const toWeighG = massG === null || stockTimes === null ? null : massG * stockTimes;
  const weighable =
    toWeighG === null || readabilityG === null
      ? null
      : toWeighG === 0 || spiceWeighable(toWeighG, readabilityG);
  return {
    id: row.id,
    spiceId: row.spiceId,
    form: row.form,
    shareFraction,
    gPerKg,
    massG,
    toWeighG,
    onScaleG: toWeighG === null || readabilityG === null ? null : nearestStepG(toWeighG, readabilityG),
    weighable,
    dilution:
      dilute && weighable === false && toWeighG !== null && readabilityG !== null
        ? dilutionOf(toWeighG, stockTimes ?? 1, readabilityG)
        : null,
    wholeG:
      row.form === 'ground' && toWeighG !== null && grindingLoss !== null
        ? wholeToGrindG(toWeighG, grindingLoss)
        : null,
    carriedSaltG: carriedSalt(row, massG),
    tasteFromG:
      massG === null || timesTasted === null ? null : strongAromaticG(row.spiceId, massG, timesTasted),
  };
}

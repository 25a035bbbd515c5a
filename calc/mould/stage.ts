import type { Finding, MissingInput, StageResult } from '../findings/index.ts';
import { compensatedSum, entryValue } from '../quantities/index.ts';
import { fillOf } from './fill.ts';
import type { MouldFindingId } from './finding-ids.ts';
import { fatLiningG, liningSheetMm } from './lining.ts';
import type { MouldFill } from './mould-fill.ts';
import { mouldFindings } from './mould-findings.ts';
import { type MouldReading, readMould } from './read-mould.ts';
import type { MouldItem, MouldSlice } from './slice.ts';

/** Boards are cut this much smaller all round, mm. Common practice, no source. */
const BOARD_GAP_MM = 2.5;
/** Densities a forcemeat, jelly or mousse may have, g/mL. Common practice, no source. */
const DENSITY_RANGE_G_PER_ML = { min: 0.75, max: 1.1 };
/** A last mould filled less than this cooks and chills unlike the others. Common practice, no source. */
const LEAST_LAST_FILL = 0.3;

export interface MouldValues {
  readonly moulds: readonly MouldFill[];
  readonly densityGPerMl: number | null;
  /** What all moulds take together, g. */
  readonly capacityG: number | null;
  /** Batch less capacity: + is left over, − is short. */
  readonly leftoverG: number | null;
  /** Filled weights as weighed, all moulds, g; null when none was weighed. */
  readonly actualTotalG: number | null;
  /** The same once every mould of the batch was weighed; null before: a loss of some moulds is none of the batch. */
  readonly filledTotalG: number | null;
}

/**
 * Fill, lining and number of the moulds of a batch.
 *
 * @param slice the moulds and the density of the mix
 * @param context mass of everything in the bowl, g; null when the formula is not complete. Whether the formula
 *   has a line for the lining.
 */
export function mouldStage(
  slice: MouldSlice,
  context: { readonly totalMassG: number | null; readonly hasLiningLine?: boolean },
): StageResult<MouldValues, MouldFindingId> {
  const densityGPerMl = entryValue('density', slice.density);
  const findings: Finding<MouldFindingId>[] = [];
  const missing: MissingInput[] = [];
  if (densityGPerMl === null) missing.push({ field: 'mould.density', neededFor: 'mould.fill' });
  else if (densityGPerMl < DENSITY_RANGE_G_PER_ML.min || densityGPerMl > DENSITY_RANGE_G_PER_ML.max) {
    findings.push({
      id: 'mould.density-unusual',
      severity: 'note',
      stage: 'mould',
      field: 'mould.density',
      params: {
        densityGPerMl,
        lowGPerMl: DENSITY_RANGE_G_PER_ML.min,
        highGPerMl: DENSITY_RANGE_G_PER_ML.max,
      },
    });
  }

  const moulds = slice.moulds.map((mould) => {
    const reading = readMould(mould);
    const fill = fillMould(mould, reading, densityGPerMl, context.totalMassG);
    missing.push(...reading.missing);
    findings.push(...mouldFindings(mould, reading, fill, context.hasLiningLine ?? false));
    return fill;
  });
  const capacityG = sumOrNull(moulds.map((mould) => mould.totalG));
  const leftoverG = capacityG === null || context.totalMassG === null ? null : context.totalMassG - capacityG;
  findings.push(...batchFindings(moulds, leftoverG));

  const weighed = moulds.flatMap((mould) => mould.actualFillsG).filter((grams) => grams !== null);
  const actualTotalG = weighed.length > 0 ? compensatedSum(weighed) : null;
  const filledTotalG = moulds.length > 0 && moulds.every(isAllWeighed) ? actualTotalG : null;
  return {
    values: { moulds, densityGPerMl, capacityG, leftoverG, actualTotalG, filledTotalG },
    findings,
    verdicts: [],
    missing,
  };
}

function isAllWeighed({ count, actualFillsG }: MouldFill): boolean {
  return count !== null && actualFillsG.filter((grams) => grams !== null).length === count;
}

function fillMould(
  mould: MouldItem,
  reading: MouldReading,
  densityGPerMl: number | null,
  batchG: number | null,
): MouldFill {
  const { geometry, waterFillMl, headspaceMm, liningThicknessMm, count } = reading;
  const fill =
    geometry && headspaceMm !== null && liningThicknessMm !== null && densityGPerMl !== null
      ? fillOf({ geometry, waterFillMl, headspaceMm, liningThicknessMm, densityGPerMl })
      : null;
  const calculatedBrimMl = geometry ? geometry.volumeToMm3(geometry.depthMm) / 1000 : null;
  const fillDepthMm =
    geometry && headspaceMm !== null && headspaceMm < geometry.depthMm
      ? geometry.depthMm - headspaceMm
      : null;
  const plan = geometry && fillDepthMm !== null ? geometry.planAtMm(fillDepthMm) : null;
  const fillG = fill?.fillG ?? null;
  return {
    id: mould.id,
    shape: mould.shape,
    brimMl: waterFillMl ?? calculatedBrimMl,
    calculatedBrimMl,
    waterDifferenceFraction:
      waterFillMl !== null && calculatedBrimMl !== null ? waterFillMl / calculatedBrimMl - 1 : null,
    densityGPerMl,
    headspaceMm,
    fillDepthMm,
    liningMl: fill?.liningMl ?? null,
    fatLiningG:
      mould.liningKind === 'fat' && geometry && liningThicknessMm !== null
        ? fatLiningG(geometry, liningThicknessMm)
        : null,
    liningSheetMm: geometry ? liningSheetMm(mould.liningKind, geometry) : null,
    fillMl: fill?.fillMl ?? null,
    fillG,
    count,
    totalG: fillG !== null && count !== null ? fillG * count : null,
    planAreaMm2: geometry && fillDepthMm !== null ? geometry.surfaceAtMm2(fillDepthMm) : null,
    boardMm: plan && {
      lengthMm: Math.max(0, plan.lengthMm - 2 * BOARD_GAP_MM),
      widthMm: Math.max(0, plan.widthMm - 2 * BOARD_GAP_MM),
    },
    actualFillsG: reading.actualFillsG,
    batchFills: fillG !== null && batchG !== null ? wholeFills(batchG, fillG) : null,
  };
}

function wholeFills(batchG: number, fillG: number): { whole: number; leftoverG: number } {
  const whole = Math.floor(batchG / fillG);
  return { whole, leftoverG: batchG - whole * fillG };
}

/** Whether the moulds chosen suit the batch. */
function batchFindings(moulds: readonly MouldFill[], leftoverG: number | null): Finding<MouldFindingId>[] {
  if (leftoverG === null || moulds.length === 0) return [];
  const tell = (id: MouldFindingId, params: Record<string, number>): Finding<MouldFindingId>[] => [
    { id, severity: 'note', stage: 'mould', field: 'mould.moulds', params },
  ];
  const smallestG = Math.min(...moulds.map((mould) => mould.fillG ?? Number.POSITIVE_INFINITY));
  if (leftoverG >= smallestG) return tell('mould.moulds-short', { leftoverG, fillG: smallestG });
  const shortG = -leftoverG;
  if (shortG <= 0) return [];
  if (shortG >= smallestG) return tell('mould.batch-short', { shortG });
  const lastFraction = 1 - shortG / smallestG;
  return lastFraction < LEAST_LAST_FILL
    ? tell('mould.last-mould-low', { shortG, lastFraction })
    : tell('mould.batch-short', { shortG });
}

function sumOrNull(parts: readonly (number | null)[]): number | null {
  const known = parts.filter((part) => part !== null);
  return parts.length > 0 && known.length === parts.length ? compensatedSum(known) : null;
}

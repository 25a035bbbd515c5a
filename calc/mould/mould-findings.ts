import type { Finding, Params, Severity } from '../findings/index.ts';
import type { MouldFindingId } from './finding-ids.ts';
import type { MouldFill } from './mould-fill.ts';
import type { MouldReading } from './read-mould.ts';
import type { MouldItem } from './slice.ts';

/** Water and measures may differ by this much before the measures are doubted. Common practice, no source. */
export const WATER_DIFFERENCE = 0.05;
/** Deepest fill that still chills in good time. Common practice, no source. */
export const CHILL_DEPTH_MM = 75;
/** Least headspace of an open mould. Common practice, no source. */
const LEAST_HEADSPACE_MM = 5;
/** What a filled mould may weigh off its target. Common practice, no source. */
const FILL_TOLERANCE = 0.05;

type MouldFinding = Finding<MouldFindingId>;

/**
 * What is worth telling about one mould.
 * @param hasLiningLine the formula has a lining of its own, so that its salt and fat are counted
 */
export function mouldFindings(
  mould: MouldItem,
  reading: MouldReading,
  fill: MouldFill,
  hasLiningLine: boolean,
): MouldFinding[] {
  const found: MouldFinding[] = [];
  const path = `mould.moulds.${mould.id}`;
  const tell = (
    id: MouldFindingId,
    severity: Severity,
    field: string,
    params: Params = {},
    caution?: string,
  ) =>
    found.push({
      id,
      severity,
      stage: 'mould',
      field: `${path}.${field}`,
      params: { mould: mould.name, ...params },
      ...(caution ? { caution } : {}),
    });

  if (reading.standsOrLies) tell('mould.stands-or-lies', 'caution', 'dimensions.length');
  const { geometry, headspaceMm } = reading;
  const canCompute = geometry && headspaceMm !== null && reading.liningThicknessMm !== null;
  if (canCompute && fill.densityGPerMl !== null && fill.fillMl === null) {
    tell('mould.no-room', 'caution', 'headspace', { depthMm: geometry.depthMm, headspaceMm });
  }
  if (geometry && !geometry.closed && headspaceMm !== null && headspaceMm < LEAST_HEADSPACE_MM) {
    tell('mould.headspace-small', 'note', 'headspace', { headspaceMm, leastMm: LEAST_HEADSPACE_MM });
  }
  const { waterDifferenceFraction, brimMl, calculatedBrimMl } = fill;
  if (waterDifferenceFraction !== null && Math.abs(waterDifferenceFraction) > WATER_DIFFERENCE) {
    tell('mould.water-differs', 'caution', 'waterFill', {
      waterMl: brimMl ?? 0,
      calculatedMl: calculatedBrimMl ?? 0,
      differenceFraction: waterDifferenceFraction,
    });
  }
  if (fill.fillDepthMm !== null && fill.fillDepthMm > CHILL_DEPTH_MM) {
    const params = { fillDepthMm: fill.fillDepthMm, limitMm: CHILL_DEPTH_MM };
    tell(
      'mould.chill-depth',
      'caution',
      geometry?.closed ? 'dimensions.diameter' : 'headspace',
      params,
      'chill-depth',
    );
  }
  if (mould.liningKind === 'film') tell('mould.film-rating', 'note', 'liningKind', { ratingC: 110 });
  const isFood = mould.liningKind === 'fat' || mould.liningKind === 'bacon' || mould.liningKind === 'caul';
  if (isFood && !hasLiningLine) {
    const eachG = fill.fatLiningG === null ? {} : { eachG: fill.fatLiningG };
    tell('mould.lining-in-formula', 'note', 'liningKind', { kind: mould.liningKind, ...eachG });
  }
  for (const [index, actualG] of reading.actualFillsG.entries()) {
    if (actualG === null || fill.fillG === null) continue;
    const offFraction = actualG / fill.fillG - 1;
    if (Math.abs(offFraction) > FILL_TOLERANCE) {
      tell('mould.fill-differs', 'note', `actualFills.${index}`, { actualG, fillG: fill.fillG, offFraction });
    }
  }
  return found;
}

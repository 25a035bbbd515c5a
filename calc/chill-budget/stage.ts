import type { MissingInput, StageResult } from '../findings/index.ts';
import { FILMS } from '../heat/index.ts';
import { compensatedSum, entryValue, readEntry } from '../quantities/index.ts';
import { type HeatLot, heatOfLots, heatOfMix, mixTempC } from './balance.ts';
import type { ChillBudgetFindingId } from './finding-ids.ts';
import { chillBudgetFindings } from './findings.ts';
import { excessHeatJ, iceNeededG } from './ice-needed.ts';
import { END_MIX_LIMIT_C, finenessOf } from './limits.ts';
import { isMeatLot, type ReadLot, readLots } from './read-lots.ts';
import { runPasses } from './run-passes.ts';
import type { ChillBudgetSlice } from './slice.ts';
import { minutesToWarm } from './time-to-warm.ts';
import type { ChillBudgetValues } from './values.ts';

export interface ChillBudgetContext {
  readonly familyId: string | null;
}

/** Room air at its quickest, so that the margin is rather short. Source: `film-coefficient-ranges`. */
const ROOM_FILM_WM2K = FILMS.room.high;

/**
 * How warm the mix ends, pass by pass, by a balance of heat in which part-frozen meat counts with its ice; the ice to
 * add, the chill to begin with, and the minutes there are. Quality of the bind only.
 */
export function chillBudgetStage(
  slice: ChillBudgetSlice,
  context: ChillBudgetContext,
): StageResult<ChillBudgetValues, ChillBudgetFindingId> {
  const lots = readLots(slice);
  const run = runPasses(lots, slice.passes);
  const endC = lots.length === 0 ? null : (run.steps.at(-1)?.tempC ?? null);
  const other = readLots(slice, slice.fatHeat === 'with-melting' ? 'without-melting' : 'with-melting');
  const limit = limitOf(slice, context);
  const ready = lots.flatMap((lot) => lot.ready ?? []);
  const complete = lots.length > 0 && ready.length === lots.length && run.workJ !== null;
  const massG = complete ? compensatedSum(ready.map((lot) => lot.massG)) : null;
  const workJ = complete ? run.workJ : null;
  const iceC = entryValue('temperature', slice.iceTemp);
  const ice =
    workJ === null || limit.limitC === null || iceC === null
      ? null
      : iceNeededG(excessHeatJ(ready, workJ, limit.limitC), limit.limitC, iceC);
  const preChillC =
    workJ === null || limit.limitC === null ? null : warmestStartC(lots, ready, workJ, limit.limitC);
  const values: ChillBudgetValues = {
    massG,
    steps: run.steps,
    endC,
    endOtherFatC: lots.length === 0 ? null : (runPasses(other, slice.passes).steps.at(-1)?.tempC ?? null),
    ...limit,
    workJ,
    iceNeededG: ice,
    iceNeededFraction: ice === null || !massG ? null : ice / massG,
    preChillC,
    marginBeforeMin: complete ? marginBefore(slice, lots, preChillC) : null,
    marginAfterMin:
      endC === null || limit.limitC === null || massG === null
        ? null
        : warming(slice, ready, massG, endC, limit.limitC),
  };
  return {
    values,
    findings: chillBudgetFindings(slice, lots, values),
    verdicts: [],
    missing: chillBudgetMissing(slice, lots, limit.limitC),
  };
}

function limitOf(
  slice: ChillBudgetSlice,
  { familyId }: ChillBudgetContext,
): Pick<ChillBudgetValues, 'limitC' | 'limitFrom'> {
  const typed = readEntry('temperature', slice.limit);
  if (typed.state === 'ok') return { limitC: typed.value, limitFrom: 'entered' };
  const fineness = typed.state === 'blank' ? finenessOf(familyId) : null;
  return fineness === null
    ? { limitC: null, limitFrom: null }
    : { limitC: END_MIX_LIMIT_C[fineness], limitFrom: fineness };
}

/** One temperature for all meat and fat at the start, all else as it is, that ends at the limit. */
function warmestStartC(
  lots: readonly ReadLot[],
  ready: readonly HeatLot[],
  workJ: number,
  limitC: number,
): number | null {
  const of = (meat: boolean) =>
    lots.filter(({ lot }) => isMeatLot(lot) === meat).flatMap((lot) => lot.ready ?? []);
  return mixTempC(of(true), heatOfMix(ready, limitC) - workJ - heatOfLots(of(false)));
}

function marginBefore(slice: ChillBudgetSlice, lots: readonly ReadLot[], preChillC: number | null) {
  const meat = lots.filter(({ lot }) => isMeatLot(lot)).flatMap((lot) => lot.ready ?? []);
  const meanC = mixTempC(meat, heatOfLots(meat));
  if (meanC === null || preChillC === null) return null;
  return warming(slice, meat, compensatedSum(meat.map(({ massG }) => massG)), meanC, preChillC);
}

function warming(
  slice: ChillBudgetSlice,
  lots: readonly HeatLot[],
  massG: number,
  fromC: number,
  toC: number,
): number | null {
  const roomC = entryValue('temperature', slice.room);
  const layerMm = entryValue('length', slice.layer);
  if (roomC === null || layerMm === null) return null;
  return minutesToWarm({ lots, massG, layerMm, roomC, filmWm2K: ROOM_FILM_WM2K }, fromC, toC);
}

function chillBudgetMissing(
  slice: ChillBudgetSlice,
  lots: readonly ReadLot[],
  limitC: number | null,
): MissingInput[] {
  const missing: MissingInput[] = [];
  const need = (known: unknown, field: string, neededFor = 'chill-budget.end') => {
    if (known === null) missing.push({ field: `chillBudget.${field}`, neededFor });
  };
  if (lots.length === 0) return [{ field: 'chillBudget.lots', neededFor: 'chill-budget.end' }];
  for (const { lot, massG, tempC } of lots) {
    need(massG, `lots.${lot.id}.mass`);
    need(tempC, `lots.${lot.id}.temp`);
    if (lot.kind === 'mixed') need(entryValue('fraction', lot.fat), `lots.${lot.id}.fat`);
  }
  for (const pass of slice.passes)
    need(entryValue('temperature-difference', pass.rise), `passes.${pass.id}.rise`);
  need(limitC, 'limit', 'chill-budget.ice');
  need(entryValue('temperature', slice.iceTemp), 'iceTemp', 'chill-budget.ice');
  need(entryValue('temperature', slice.room), 'room', 'chill-budget.margin');
  need(entryValue('length', slice.layer), 'layer', 'chill-budget.margin');
  return missing;
}

import type { Finding, Params, Severity } from '../findings/index.ts';
import { entryValue } from '../quantities/index.ts';
import type { ChillBudgetFindingId } from './finding-ids.ts';
import { FAT_START_MOST_C, PASS_STOP_C, RECHILL_C, START_MOST_C, TOO_HARD_C } from './limits.ts';
import type { ReadLot } from './read-lots.ts';
import type { ChillBudgetSlice } from './slice.ts';
import type { ChillBudgetValues } from './values.ts';

/** The noise of halving. */
const NOISE = 1e-6;

type ChillBudgetFinding = Finding<ChillBudgetFindingId>;

/** What is worth telling about the chill of grinding and mixing. */
export function chillBudgetFindings(
  slice: ChillBudgetSlice,
  lots: readonly ReadLot[],
  values: ChillBudgetValues,
): ChillBudgetFinding[] {
  const found: ChillBudgetFinding[] = [];
  const tell = (id: ChillBudgetFindingId, severity: Severity, field: string, params: Params = {}) =>
    found.push({
      id,
      severity,
      stage: 'chill-budget',
      field: `chillBudget.${field}`,
      params,
      basis: 'trade-grinding-habits',
    });

  for (const { lot, tempC } of lots) {
    if (tempC === null) continue;
    const path = `lots.${lot.id}.temp`;
    const params = { name: lot.name, kind: lot.kind, tempC };
    if (lot.kind === 'ice' && tempC > 0) tell('chill-budget.ice-too-warm', 'caution', path, params);
    if (lot.kind === 'fat' && tempC > FAT_START_MOST_C)
      tell('chill-budget.fat-too-warm', 'caution', path, { ...params, mostC: FAT_START_MOST_C });
    else if (lot.kind !== 'ice' && tempC > START_MOST_C)
      tell('chill-budget.start-too-warm', 'caution', path, { ...params, mostC: START_MOST_C });
  }
  for (const [index, { passId, tempC }] of values.steps.entries()) {
    const pass = slice.passes.find(({ id }) => id === passId);
    if (tempC === null || !pass) continue;
    const path = `passes.${pass.id}.rise`;
    const params = { pass: index, kind: pass.kind, tempC };
    if (pass.kind === 'grind' && tempC > PASS_STOP_C + NOISE)
      tell(
        tempC > RECHILL_C + NOISE ? 'chill-budget.rechill-now' : 'chill-budget.pass-too-warm',
        'caution',
        path,
        { ...params, mostC: tempC > RECHILL_C + NOISE ? RECHILL_C : PASS_STOP_C },
      );
    if (tempC < TOO_HARD_C) tell('chill-budget.too-hard', 'note', path, { ...params, leastC: TOO_HARD_C });
  }
  const { endC, limitC, iceNeededG, preChillC } = values;
  if (endC !== null && limitC !== null && endC > limitC + NOISE)
    tell('chill-budget.end-too-warm', 'caution', 'limit', { endC, limitC });
  if (limitC !== null && limitC < 0) tell('chill-budget.ice-melts-nothing', 'note', 'limit', { limitC });
  iceFindings(slice, lots, iceNeededG, tell);
  const freezerC = entryValue('temperature', slice.freezer);
  const warm = endC !== null && limitC !== null && endC > limitC + NOISE;
  if (warm && (preChillC === null || (freezerC !== null && preChillC < freezerC)))
    tell('chill-budget.pre-chill-too-cold', 'caution', 'limit', { limitC: limitC ?? 0 });
  return found;
}

function iceFindings(
  slice: ChillBudgetSlice,
  lots: readonly ReadLot[],
  iceNeededG: number | null,
  tell: (id: ChillBudgetFindingId, severity: Severity, field: string, params?: Params) => void,
): void {
  const iceC = entryValue('temperature', slice.iceTemp);
  if (iceC !== null && iceC > 0)
    tell('chill-budget.ice-too-warm', 'caution', 'iceTemp', { name: '', kind: 'ice', tempC: iceC });
  const iceInMixG = lots.reduce((sum, { lot, massG }) => sum + (lot.kind === 'ice' ? (massG ?? 0) : 0), 0);
  const iceG = (iceNeededG ?? 0) + iceInMixG;
  const allowedG = entryValue('mass', slice.liquidAllowance);
  if (allowedG !== null && iceG > allowedG + NOISE)
    tell('chill-budget.ice-over-liquid', 'caution', 'liquidAllowance', { iceG, allowedG });
  if (iceG > NOISE) tell('chill-budget.ice-is-added-water', 'note', 'liquidAllowance', { iceG });
}

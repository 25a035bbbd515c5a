import type { PlanOutcome } from './values.ts';

/**
 * Where on the upright middle line the mix was coldest at a moment: mm over its base, and what it read there, °C.
 * The probe belongs there when the heat ends.
 */
export function coldestSpot(
  { timesMin, coreHeightMm, coreC }: Pick<PlanOutcome, 'timesMin' | 'coreHeightMm' | 'coreC'>,
  timeMin: number,
): { readonly heightMm: number; readonly tempC: number } | null {
  let last = -1;
  for (const [i, at] of timesMin.entries()) if (at <= timeMin + 1e-9) last = i;
  const [heightMm, tempC] = [coreHeightMm[last], coreC[last]];
  return heightMm === undefined || tempC === undefined ? null : { heightMm, tempC };
}

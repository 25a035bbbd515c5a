import type { WindowLeg } from './model.ts';

/** Upper edge of the cooling window between two moments. `topC` null: the rule sets none there yet. */
export interface WindowStep {
  readonly fromMs: number;
  readonly toMs: number;
  readonly topC: number | null;
  /** What must be true at the end of the step. */
  readonly label: string;
}

/**
 * The steps a cooling curve must stay under. Until a leg's time is up the core may stand anywhere below
 * where the leg began; from then on it may not be above where the leg ends. Legs may run one after the
 * other or all from the same start.
 *
 * @param endMs right edge of the drawing
 */
export function windowSteps(legs: readonly WindowLeg[], endMs: number): WindowStep[] {
  const ordered = legs
    .filter((leg) => Number.isFinite(leg.fromMs) && Number.isFinite(leg.byMs) && leg.byMs > leg.fromMs)
    .sort((a, b) => a.byMs - b.byMs);
  const steps: WindowStep[] = [];
  let atMs = ordered.reduce((least, leg) => Math.min(least, leg.fromMs), Number.POSITIVE_INFINITY);
  let topC: number | null = ordered[0]?.fromC ?? null;
  for (const leg of ordered) {
    if (leg.byMs > atMs) steps.push({ fromMs: atMs, toMs: leg.byMs, topC, label: leg.label });
    atMs = Math.max(atMs, leg.byMs);
    topC = topC === null ? leg.toC : Math.min(topC, leg.toC);
  }
  if (ordered.length > 0 && endMs > atMs) steps.push({ fromMs: atMs, toMs: endMs, topC, label: '' });
  return steps;
}

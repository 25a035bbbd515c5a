import type { ReadBand } from '../band.ts';
import type { MaterialFractions } from '../makeup.ts';

/** A material as the linear programme sees it. */
export interface ProblemMaterial {
  readonly id: string;
  readonly perKg: number;
  readonly stockG: number | null;
  readonly minShare: number | null;
  readonly maxShare: number | null;
  /** Goes in at this mass whatever happens; its stock and shares bind nothing. */
  readonly lockedG: number | null;
  readonly fractions: MaterialFractions;
}

/** A least-cost blend as plain numbers. Every quality that a band bounds is known of every material. */
export interface BlendProblem {
  readonly totalG: number;
  readonly materials: readonly ProblemMaterial[];
  readonly bands: readonly ReadBand[];
}

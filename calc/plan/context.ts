import type { MixLine } from '../formula/index.ts';
import type { MouldFill } from '../mould/index.ts';
import type { Entry } from '../quantities/index.ts';

/** What a plan needs of the rest of the batch. */
export interface PlanContext {
  /** Planned portions of the product. */
  readonly portions: Entry;
  readonly familyId: string | null;
  /** The formula as planned: its lines and everything in the bowl, g. */
  readonly lines: readonly MixLine[];
  readonly totalG: number | null;
  readonly moulds: readonly MouldFill[];
  /** What all moulds take together, g. */
  readonly capacityG: number | null;
  /** Wall clock of the caller, for a plan that begins in the past; null: not asked. */
  readonly now: string | null;
}

import type { AfterDrying } from './after-drying.ts';
import type { DegreeHours, DegreeHourTable } from './degree-hours.ts';
import type { RatioClass } from './moisture-protein.ts';
import type { TrichinaDrying, TrichinaSalt } from './trichina.ts';
import type { WaterActivityLimit } from './water-activity-limits.ts';

/** Figures of a drying. Masses in g, fractions 0–1; null is unknown. */
export interface DryingValues {
  readonly lossFraction: number | null;
  readonly targetMassG: number | null;
  /** Still to lose until the target, g; 0 once there. */
  readonly toLoseG: number | null;
  readonly saltAtTargetFraction: number | null;
  /** By the start's composition at the loss so far, and at the wanted loss. */
  readonly now: AfterDrying | null;
  readonly atTarget: AfterDrying | null;
  readonly measuredWaterActivity: number | null;
  readonly waterActivityRows: readonly {
    readonly limit: WaterActivityLimit;
    /** Measured at or under its highest, or under its lowest; null while nothing was measured. */
    readonly isBelow: boolean | null;
  }[];
  /** Moisture : protein by the laboratory, and by the start's composition at the loss so far. */
  readonly measuredRatio: number | null;
  readonly estimatedRatio: number | null;
  readonly ratioRows: readonly {
    readonly ratioClass: RatioClass;
    /** By the laboratory's figures only. */
    readonly meets: boolean | null;
    /** Loss that would reach it. */
    readonly lossFraction: number | null;
  }[];
  readonly degreeHours: DegreeHours | null;
  readonly degreeHourTable: DegreeHourTable | null;
  readonly trichina: TrichinaDrying | null;
  readonly trichinaSalt: TrichinaSalt | null;
  readonly ph: number | null;
}

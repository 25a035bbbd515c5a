import type { HeatRun, Tier } from '../heat/index.ts';
import type { PlanGround } from './problem.ts';
import type { SectionNet, SectionPicture } from './section.ts';
import type { PlanStageKind } from './stages.ts';

/** What a curve that was never measured can say: that it would be within a limit, or beyond it. Never a pass. */
export type PredictedState = 'within' | 'beyond' | 'cannot-tell';

export interface PredictedLeg {
  readonly legId: string;
  readonly elapsedMin: number | null;
  readonly state: PredictedState;
}

export interface PlanPrediction {
  /** When the core reaches the target; null when it does not in 12 h of heat. */
  readonly targetMin: number | null;
  /** When heating ends, the hold done. */
  readonly heatEndMin: number;
  /** Hottest the coldest spot gets, and when. */
  readonly peak: { readonly tempC: number; readonly timeMin: number };
  /** How far the core still climbs out of the heat, °C. */
  readonly carryOverC: number;
  /** The hold of the limit: how long the core stays at or above it, come-up to carry-over. Null without a limit. */
  readonly hold: { readonly state: PredictedState; readonly heldMin: number } | null;
  /** Core from 10 °C to 54.4 °C (130 °F), min; null when it does not get there. */
  readonly comeUpMin: number | null;
  /** Pasteurisation values, min at 70 °C, of the coldest spot: in the heat alone, and with carry-over. */
  readonly value: { readonly z7_5: PlanValues; readonly z10: PlanValues };
  /** From the end of heating, by the slowest spot; null without a cooling rule set. */
  readonly cooling: { readonly state: PredictedState; readonly legs: readonly PredictedLeg[] } | null;
  /** End of rest and press to the first chill, min, and whether the rule set allows it. */
  readonly chillStart: { readonly waitMin: number; readonly state: PredictedState } | null;
  /** Core at the end of the plan, °C, slowest spot, and when that is. */
  readonly endC: number;
  readonly endMin: number;
}

export interface PlanValues {
  readonly heatMin: number;
  readonly wholeMin: number;
}

/** How one stage of the plan came out. */
export interface PlanMark {
  readonly kind: PlanStageKind;
  readonly legId: string | null;
  readonly startMin: number;
  readonly endMin: number;
  /** False when it ran out of time before its end temperature. */
  readonly reached: boolean;
}

/** What the engine and the rules make of a plan. Plain data. Curves have one length; times in min, °C. */
export interface PlanOutcome {
  readonly tier: Tier;
  readonly timesMin: Float64Array;
  /** Coldest spot of the upright middle line; out of the heat, the spot that was coldest then. */
  readonly coreC: Float64Array;
  /** Hottest spot of it: the last to cool. */
  readonly hottestC: Float64Array;
  readonly topC: Float64Array;
  /** Water of the bath; NaN where there is none. */
  readonly bathC: Float64Array;
  /** Height of the coldest spot over the base of the mix, mm. */
  readonly coreHeightMm: Float64Array;
  readonly marks: readonly PlanMark[];
  readonly prediction: PlanPrediction;
  readonly section: SectionNet;
  readonly pictures: readonly SectionPicture[];
  /** Heat in through the outer faces and rise of what is held, J. */
  readonly energy: HeatRun['energy'];
}

export interface CookPlanValues {
  readonly ground: PlanGround;
  /** Water at the mould, mm over the outside of its base; null without a bath. */
  readonly levelMm: number | null;
  /** What the engine made of it; null until it has answered. */
  readonly outcome: PlanOutcome | null;
}

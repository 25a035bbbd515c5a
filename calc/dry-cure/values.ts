import type { JudgedLimit } from '../cure/index.ts';
import type { CureTime } from './cure-time.ts';
import type { PackReading } from './pack.ts';
import type { PiecePlan } from './piece-plan.ts';
import type { WholeMuscleRuleSet } from './rule-sets/index.ts';

/** What one piece holds or is to hold. Masses in g, concentrations mg/kg; null is unknown. */
export interface PieceValues {
  readonly id: string;
  readonly name: string;
  /** Green weight without skin, on which every dose is counted. */
  readonly greenG: number | null;
  /** From the weight with skin, less a tenth. */
  readonly isSkinEstimated: boolean;
  readonly thicknessMm: number | null;
  /** Null for salt box and rub: uptake is not controlled and no dose is given. */
  readonly plan: PiecePlan | null;
  /** As weighed where it was weighed, else as planned. */
  readonly inUse: {
    readonly plainSaltG: number | null;
    readonly curingSaltG: number | null;
    readonly sugarG: number | null;
    readonly isCureWeighed: boolean;
  };
  /** Salt from all sources on the meat; null for salt box and rub. */
  readonly saltFraction: number | null;
  /** As sodium nitrite, on the green weight and on meat with its cure; null for salt box and rub. */
  readonly nitritePpmMeat: number | null;
  readonly nitritePpmTotal: number | null;
  readonly nitriteIonPpmTotal: number | null;
  readonly weighingErrorFraction: number | null;
  readonly ceilings: readonly JudgedLimit[];
  readonly floors: readonly JudgedLimit[];
  readonly time: CureTime;
  /** Dates on which the bag is turned, to the early and to the late end of the guidance. */
  readonly turnOn: readonly string[];
  readonly readyFrom: string | null;
  readonly readyBy: string | null;
  /** Weight at the wanted loss, and salt there. */
  readonly targetMassG: number | null;
  readonly saltAtTargetFraction: number | null;
  /** Loss so far, − where it gained. */
  readonly lossFraction: number | null;
}

export interface DryCureValues {
  readonly ruleSet: WholeMuscleRuleSet | null;
  readonly pack: PackReading;
  readonly pieces: readonly PieceValues[];
  readonly chillC: number | null;
  readonly ceilingPpmMeat: number | null;
}

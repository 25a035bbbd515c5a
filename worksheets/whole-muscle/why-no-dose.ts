import type { CuringSaltDose, CuringSaltRefusal } from '@larderwright/calc/cure';
import type { PackReading, WholeMuscleRuleSet } from '@larderwright/calc/dry-cure';
import * as say from '#words/whole-muscle/why-no-dose.ts';

const REFUSED: Readonly<Record<CuringSaltRefusal, string>> = {
  'unusable-input': say.noDoseOneNumbersCannotUsed,
  'target-over-ceiling': say.refusedNitriteWantedOverLimit,
  'other-sources-over-ceiling': say.refusedOneStepScaleBreaksLimit,
  'strength-below-target': say.refusedCuringSaltTooWeak,
  'too-small-to-weigh': say.refusedTooLittleScaleWeigh,
};

/** What a dose of curing salt rests on. Null is unknown. */
export interface DoseGround {
  readonly dose: CuringSaltDose | null;
  readonly targetPpm: number | null;
  readonly ruleSet: WholeMuscleRuleSet | null;
  readonly hasProduct: boolean;
  readonly ceilingPpm: number | null;
  readonly pack: PackReading;
  readonly readabilityG: number | null;
  readonly greenG: number | null;
}

/** The first thing that stands in the way of a dose, in words. */
export function whyNoDose(ground: DoseGround): string {
  const { dose, targetPpm, ruleSet, hasProduct, ceilingPpm, pack, readabilityG, greenG } = ground;
  if (dose && !dose.ok) return REFUSED[dose.reason];
  if (targetPpm === 0) return say.noneNoNitriteIsWanted;
  if (ruleSet === null) return say.cannotTellChooseWhoseRule;
  if (!hasProduct) return say.cannotTellSayWhatBaconHam;
  if (ceilingPpm === null) return say.noDoseNoLimitRuleCarried;
  if (targetPpm === null) return say.cannotTellWriteNitriteWanted;
  if (pack.problem === 'missing') return say.cannotTellReadStrengthOffPack;
  if (pack.problem !== null) return say.cannotTellNoPackStrength;
  if (readabilityG === null) return say.cannotTellWriteSmallestStep;
  if (greenG === null) return say.cannotTellWeighTheMeat;
  return say.cannotTellAnInputIsMissing;
}

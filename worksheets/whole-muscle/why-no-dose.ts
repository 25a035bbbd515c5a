import type { CuringSaltDose, CuringSaltRefusal } from '@larderwright/calc/cure';
import type { PackReading, WholeMuscleRuleSet } from '@larderwright/calc/dry-cure';

const REFUSED: Readonly<Record<CuringSaltRefusal, string>> = {
  'unusable-input': 'No dose: one of the numbers cannot be used',
  'target-over-ceiling': 'Refused: the nitrite wanted is over the limit of this rule',
  'other-sources-over-ceiling': 'Refused: one step of this scale breaks the limit of the rule',
  'strength-below-target': 'Refused: this curing salt is too weak for the nitrite wanted',
  'too-small-to-weigh': 'Refused: too little for this scale to weigh',
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
  if (targetPpm === 0) return 'None: no nitrite is wanted';
  if (ruleSet === null) return 'Cannot tell: choose whose rule on nitrite first';
  if (!hasProduct) return 'Cannot tell: say what it is, bacon, ham or another muscle';
  if (ceilingPpm === null) return 'No dose: no limit of this rule for it is carried here';
  if (targetPpm === null) return 'Cannot tell: write the nitrite wanted';
  if (pack.problem === 'missing') return 'Cannot tell: read the strength off the pack';
  if (pack.problem !== null) return 'Cannot tell: no pack is of that strength';
  if (readabilityG === null) return 'Cannot tell: write the smallest step of the scale';
  if (greenG === null) return 'Cannot tell: weigh the meat';
  return 'Cannot tell: an input is missing';
}

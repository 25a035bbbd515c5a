import { isInBowl } from '../formula/index.ts';
import { compensatedSum } from '../quantities/index.ts';
import type { CureAmounts } from './amounts.ts';
import { massOf } from './amounts-of-lines.ts';
import { type CureLine, curingSalts } from './cure-line.ts';
import { type CuringSaltDose, curingSaltForTarget } from './curing-salt-for-target.ts';
import { limitAsSodiumNitrite } from './in-limit-form.ts';
import { type CureRuleSet, limitsFor, type ProductHeating } from './rule-sets/index.ts';
import { saltAndCureForTarget } from './salt-and-cure-for-target.ts';

/** The dose of the one curing salt of a formula. */
export interface LineDose {
  readonly lineId: string;
  readonly targetPpm: number;
  readonly ceilingPpm: number | null;
  readonly dose: CuringSaltDose;
}

/** What a dose is worked out from. */
export interface DoseQuestion {
  readonly lines: readonly CureLine[];
  readonly amounts: CureAmounts;
  readonly ruleSet: CureRuleSet;
  readonly heating: ProductHeating;
  readonly targetPpm: number;
  readonly readabilityG: number;
  readonly saltTargetFraction: number | null;
}

/**
 * Grams of curing salt for the wanted nitrite, on the rule set's own weight basis.
 *
 * @returns null when the formula does not have exactly one curing salt of known strength, or the
 *   weight it is counted on is not known
 */
export function doseFor(question: DoseQuestion): LineDose | null {
  const [line, another] = curingSalts(question.lines);
  const nitriteFraction = line?.curingSalt.nitriteFraction ?? null;
  if (line === undefined || another !== undefined || nitriteFraction === null) return null;
  const onTotal = question.ruleSet.ingoingBasis === 'total';
  const basisMassG = onTotal ? bowlWithoutCure(question, line, nitriteFraction) : question.amounts.meatBlockG;
  if (basisMassG === null || basisMassG <= 0) return null;

  const { targetPpm, readabilityG } = question;
  const ceilingPpm = doseCeilingPpm(question.ruleSet, question.heating);
  const ownNitriteG = (line.massG ?? 0) * nitriteFraction;
  const dose = curingSaltForTarget({
    targetPpm,
    basisMassG,
    countsInBasis: onTotal,
    nitriteFraction,
    readabilityG,
    ceilingPpm,
    otherNitriteG: Math.max(0, question.amounts.nitriteG.low - ownNitriteG),
  });
  return { lineId: line.id, targetPpm, ceilingPpm, dose };
}

/**
 * Most nitrite a dose may aim at, as sodium nitrite. Where a rule set limits only what is left, no
 * more is dosed than may be left: arithmetic can show that and nothing beyond it.
 */
export function doseCeilingPpm(ruleSet: CureRuleSet, heating: ProductHeating): number | null {
  const ceilings = limitsFor(ruleSet, heating).filter(
    (limit) => limit.substance === 'nitrite' && limit.role === 'ceiling',
  );
  const ingoing = ceilings.filter((limit) => limit.kind === 'ingoing');
  const binding = ingoing.length > 0 ? ingoing : ceilings;
  if (binding.length === 0) return null;
  return Math.min(...binding.map((limit) => limitAsSodiumNitrite(limit.expressedAs, limit.valuePpm)));
}

/**
 * Everything in the bowl but the curing salt. Where the salt of the formula is known, with the plain
 * salt that will stand beside the new dose and not the one entered: the two share one salt target.
 */
function bowlWithoutCure(question: DoseQuestion, cure: CureLine, nitriteFraction: number): number | null {
  const others = question.lines.filter((line) => isInBowl(line.part) && line.id !== cure.id);
  const besideSalt = others.filter((line) => line.part !== 'salt');
  const otherMassG = massOf(besideSalt);
  const salts = besideSalt.map((line) => saltOf(line)).filter((grams) => grams !== null);
  const { saltTargetFraction, targetPpm } = question;
  const isSaltKnown = salts.length === besideSalt.length && cure.saltFraction !== null;
  if (otherMassG !== null && isSaltKnown && saltTargetFraction !== null) {
    const both = saltAndCureForTarget({
      otherMassG,
      carriedSaltG: compensatedSum(salts),
      saltTargetFraction,
      nitriteTargetPpm: targetPpm,
      nitriteFraction,
      saltFraction: cure.saltFraction ?? 0,
    });
    if (both !== null) return otherMassG + both.plainSaltG;
  }
  return massOf(others);
}

function saltOf(line: CureLine): number | null {
  if (line.massG === 0 || line.saltFraction === 0) return 0;
  return line.massG === null || line.saltFraction === null ? null : line.massG * line.saltFraction;
}

import type { StageResult } from '../findings/index.ts';
import {
  type FormulaFindingId,
  type FormulaSlice,
  type FormulaValues,
  formulaStage,
  type Mix,
} from '../formula/index.ts';
import type { CompositionTable } from '../ingredients/index.ts';
import { entryValue } from '../quantities/index.ts';
import type { CureAmounts } from './amounts.ts';
import { amountsOfLines, massOf } from './amounts-of-lines.ts';
import { batchFindings } from './batch-findings.ts';
import { carriedNitrite } from './carried-nitrite.ts';
import { type CureLine, curingSalts } from './cure-line.ts';
import { doseFor } from './dose.ts';
import type { CureFindingId } from './finding-ids.ts';
import { lineFindings } from './line-findings.ts';
import { cureMissing } from './missing.ts';
import { nitriteIonFromSodiumNitrite } from './nitrite-forms.ts';
import { nitritePpm } from './nitrite-ppm.ts';
import { type LineMass, readCureLines } from './read-cure-lines.ts';
import { readResidual } from './residual.ts';
import { cureRuleSet, type ProductHeating } from './rule-sets/index.ts';
import type { CureSlice } from './slice.ts';
import type { CureValues, CureWeighing } from './values.ts';
import { cureVerdicts, judgeRuleSet } from './verdicts.ts';
import { isWeighable, weighingErrorFraction } from './weighing.ts';

export interface CureContext {
  readonly composition: CompositionTable;
  /** What the formula stage made of the same slice, so that it is not computed twice. */
  readonly formulaResult?: StageResult<FormulaValues, FormulaFindingId>;
  /** The whole finished product after chilling, g: limits on what is left are counted on it. */
  readonly finishedMassG?: number | null;
  /** Heated below sterilisation unless told otherwise. */
  readonly heating?: ProductHeating;
}

/**
 * Nitrite and salt of a mixed forcemeat: figures on both weight bases, the limits of the rule set a
 * person chose, the dose for a target, and what is left to say about the pack, the scale and the
 * people. Once anything has been weighed the verdict is on the mix as weighed.
 *
 * @param slices the formula and the cure of a batch
 */
export function cureStage(
  slices: { readonly formula: FormulaSlice; readonly cure: CureSlice },
  context: CureContext,
): StageResult<CureValues, CureFindingId> {
  const { composition, finishedMassG = null, heating = 'heat-treated' } = context;
  const formula = (context.formulaResult ?? formulaStage(slices.formula, { composition })).values;
  const readLines = (mix: Mix) =>
    readCureLines(slices.formula.lines, lineMasses(mix, formula.planned), composition);
  const lines = readLines(formula.mix);
  const amounts = amountsOfLines(lines, finishedMassG);
  const planned = amountsOfLines(readLines(formula.planned), finishedMassG);

  const ruleSet = cureRuleSet(slices.cure.ruleSetId);
  const { ceilings, floors } = ruleSet
    ? judgeRuleSet(ruleSet, amounts, heating, readResidual(slices.cure.residual))
    : { ceilings: [], floors: [] };
  const readabilityG = entryValue('mass', slices.cure.scaleReadability);
  const targetPpm = entryValue('ppm', slices.cure.nitriteTarget);
  const { saltTargetFraction } = formula;
  const dose =
    ruleSet && targetPpm !== null && targetPpm > 0 && readabilityG !== null
      ? doseFor({ lines, amounts, ruleSet, heating, targetPpm, readabilityG, saltTargetFraction })
      : null;

  const values: CureValues = {
    ruleSet,
    inUse: formula.inUse,
    ...nitriteFigures(amounts, planned),
    carried: carriedNitrite(lines),
    cured: curedFacts(lines, amounts, formula),
    dose,
    weighing: curingSalts(lines).map((line) => weighing(line, readabilityG)),
    salt: {
      sources: formula.mix.salt.contributions,
      totalG: formula.mix.salt.grams,
      fraction: formula.mix.salt.fraction,
      targetFraction: saltTargetFraction,
      plain: formula.plainSalt,
      plainListedG: massOf(lines.filter((line) => line.part === 'salt')),
    },
    ceilings,
    floors,
  };
  const state = { slices, lines, amounts, formula, values, readabilityG, heating };
  return {
    values,
    findings: [...lineFindings(state), ...batchFindings(state)],
    verdicts: cureVerdicts(slices.cure.ruleSetId, ruleSet, ceilings, amounts, slices.formula.familyId),
    missing: cureMissing(state),
  };
}

/** Masses and salt by line, from the mix the formula made. */
function lineMasses(mix: Mix, planned: Mix): Map<string, LineMass> {
  const plannedG = new Map(planned.lines.map((line) => [line.lineId, line.massG]));
  const salt = new Map(mix.salt.contributions.map((item) => [item.lineId, item.fraction]));
  return new Map(
    mix.lines.map((line) => [
      line.lineId,
      {
        massG: line.massG,
        plannedG: plannedG.get(line.lineId) ?? null,
        isWeighed: line.weighed,
        saltFraction: salt.get(line.lineId) ?? null,
      },
    ]),
  );
}

function ppmOn(nitriteG: number | null, basisG: number | null): number | null {
  return nitriteG === null || basisG === null ? null : nitritePpm(nitriteG, basisG);
}

/** What is known for certain, unless a curing salt itself is not known. */
function knownNitriteG(amounts: CureAmounts): number | null {
  const { unboundedBecause, isEmpty, nitriteG } = amounts;
  if (isEmpty || unboundedBecause === 'strength' || unboundedBecause === 'curing-salt-amount') return null;
  return nitriteG.low;
}

/** Nitrite of mix and lining on both together; null where there is no lining or something is not known. */
function ppmWithLining(amounts: CureAmounts, end: 'low' | 'high'): number | null {
  const { totalG, liningG, liningNitriteG } = amounts;
  const bowlG = end === 'low' ? knownNitriteG(amounts) : amounts.nitriteG.high;
  const linedG = liningNitriteG[end];
  if (totalG === null || !liningG || bowlG === null || linedG === null) return null;
  return nitritePpm(bowlG + linedG, totalG + liningG);
}

function nitriteFigures(amounts: CureAmounts, planned: CureAmounts) {
  const { meatBlockG, totalG } = amounts;
  const nitriteG = knownNitriteG(amounts);
  const nitritePpmMeat = ppmOn(nitriteG, meatBlockG);
  const nitritePpmTotal = ppmOn(nitriteG, totalG);
  const nitritePpmLined = ppmWithLining(amounts, 'low');
  const ion = (ppm: number | null) => (ppm === null ? null : nitriteIonFromSodiumNitrite(ppm));
  return {
    meatBlockG,
    totalG,
    nitriteG,
    nitritePpmMeat,
    nitritePpmTotal,
    nitriteIonPpmMeat: ion(nitritePpmMeat),
    nitriteIonPpmTotal: ion(nitritePpmTotal),
    highestPpmMeat: ppmOn(amounts.nitriteG.high, meatBlockG),
    highestPpmTotal: ppmOn(amounts.nitriteG.high, totalG),
    liningG: amounts.liningG,
    nitritePpmLined,
    nitriteIonPpmLined: ion(nitritePpmLined),
    highestPpmLined: ppmWithLining(amounts, 'high'),
    plannedPpmLined: ppmWithLining(planned, 'low'),
    plannedPpmMeat: ppmOn(knownNitriteG(planned), planned.meatBlockG),
    plannedPpmTotal: ppmOn(knownNitriteG(planned), planned.totalG),
  };
}

function curedFacts(
  lines: readonly CureLine[],
  amounts: CureAmounts,
  formula: FormulaValues,
): CureValues['cured'] {
  const { meatBlockG, totalG, acceleratorG } = amounts;
  // Only what is mixed in reaches the core of every slice.
  const curingSaltG = knownNitriteG(amountsOfLines(lines.map(withoutCarried), null));
  return {
    ingoingPpmMeat: ppmOn(curingSaltG, meatBlockG),
    ingoingPpmTotal: ppmOn(curingSaltG, totalG),
    saltOnWaterFraction: formula.mix.saltOnWaterFraction,
    saltOnWaterMinFraction: formula.mix.saltOnWaterMinFraction,
    acceleratorPpmMeat: ppmOn(acceleratorG.high, meatBlockG),
    acceleratorPpmTotal: ppmOn(acceleratorG.high, totalG),
    liverFraction: formula.facts.liverFraction,
  };
}

function withoutCarried(line: CureLine): CureLine {
  return { ...line, carriedPpm: 0 };
}

function weighing(line: CureLine, readabilityG: number | null): CureWeighing {
  const { id: lineId, massG, isWeighed } = line;
  const known = massG !== null && massG > 0 && readabilityG !== null;
  return {
    lineId,
    massG,
    isWeighed,
    errorFraction: known ? weighingErrorFraction(massG, readabilityG) : null,
    isWeighable: known ? isWeighable(massG, readabilityG) : null,
  };
}

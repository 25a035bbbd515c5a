import { type CureSlice, readResidual } from '../cure/index.ts';
import { nitrateVerdict, nitriteVerdicts, wholeMuscleRuleSet } from '../dry-cure/index.ts';
import type { MissingInput, StageResult, Verdict } from '../findings/index.ts';
import { entryValue } from '../quantities/index.ts';
import { additiveVerdicts } from './additive-verdicts.ts';
import { type BrineFigures, brineFigures } from './figures.ts';
import type { BrineFindingId } from './finding-ids.ts';
import { type BrineState, brineFindings } from './findings.ts';
import type { BrineSlice } from './slice.ts';
import type { BrineValues } from './values.ts';

/**
 * Brine and injection of whole muscle: recipe, strength in every scale, nitrite by both federal
 * methods and at its worst, salt where meat and brine come even, and what the limits say of it.
 *
 * @param slices the brine, and the cure's rule set, scale and two people
 * @param context finished weight after cooking, g, for limits on what is left
 */
export function brineStage(
  slices: { readonly cure: CureSlice; readonly brine: BrineSlice },
  context: { readonly finishedMassG?: number | null } = {},
): StageResult<BrineValues, BrineFindingId> {
  const { cure, brine: slice } = slices;
  const ruleSet = wholeMuscleRuleSet(cure.ruleSetId);
  const readability = entryValue('mass', cure.scaleReadability);
  const readabilityG = readability !== null && readability > 0 ? readability : null;
  const figures = brineFigures(
    slice,
    ruleSet,
    readabilityG,
    context.finishedMassG ?? null,
    readResidual(cure.residual),
  );
  const usesCure = curingSaltIsUsed(slice, figures);
  const verdicts = slice.method === null ? [] : brineVerdicts(slice, cure, figures);
  const state: BrineState = { slice, cure, figures, verdicts, usesCure };
  return { values: figures.values, findings: brineFindings(state), verdicts, missing: missingInputs(state) };
}

/** A target, a strength or a weighed amount: somebody means to use curing salt. A blank target is not "none". */
function curingSaltIsUsed(slice: BrineSlice, figures: BrineFigures): boolean {
  const grams = entryValue('mass', slice.actual.curingSalt);
  const isWeighed = grams === null ? slice.actual.curingSalt.text.trim() !== '' : grams > 0;
  return isWeighed || figures.nitriteTargetPpm !== 0;
}

function brineVerdicts(slice: BrineSlice, cure: CureSlice, figures: BrineFigures): Verdict<BrineFindingId>[] {
  const { values, amounts, kind } = figures;
  const of = { subject: 'brine', ruleSetId: cure.ruleSetId, kind } as const;
  const verdicts: Verdict<BrineFindingId>[] = [...nitriteVerdicts(of, values), nitrateVerdict(of, amounts)];
  if (values.ruleSet?.id !== 'us-federal' || slice.product === null) return verdicts;
  const { inUse } = values;
  return [
    ...verdicts,
    ...additiveVerdicts({
      isBacon: slice.product === 'bacon',
      isPumped: kind.route === 'pumped',
      form: slice.acceleratorForm,
      usesAccelerator: inUse.acceleratorG !== 0,
      acceleratorFraction: {
        low: values.acceleratorPpm.low === null ? null : values.acceleratorPpm.low / 1e6,
        high: values.acceleratorPpm.high === null ? null : values.acceleratorPpm.high / 1e6,
      },
      usesPhosphate: inUse.phosphateG !== 0,
      phosphateFraction: values.phosphateFraction,
      nitritePpm: values.pumpedPpm,
    }),
  ];
}

function missingInputs({ slice, cure, figures, usesCure }: BrineState): MissingInput[] {
  const missing: MissingInput[] = [];
  const { values } = figures;
  const need = (field: string, neededFor: string) => missing.push({ field, neededFor });
  if (slice.method === null) return missing;
  if (values.greenG === null) need('brine.skinOff', 'brine.recipe');
  if (values.inUse.waterG === null) need('brine.water', 'brine.recipe');
  if (values.brineC === null) need('brine.brineTemp', 'brine.cold');
  if (slice.finish === null) need('brine.finish', 'brine.nitrate');
  if (slice.method !== 'timed' && entryValue('fraction', slice.saltTarget) === null) {
    need('brine.saltTarget', 'brine.recipe');
  }
  if (slice.method === 'timed' && entryValue('fraction', slice.strength) === null) {
    need('brine.strength', 'brine.recipe');
  }
  if (slice.method !== 'inject' && entryValue('length', slice.thickness) === null) {
    need('brine.thickness', 'brine.time');
  }
  if (slice.method !== 'inject' && values.pickUpFraction === null)
    need('brine.pickUp', 'brine.pick-up-method');
  if (slice.method === 'inject' && values.pumpFraction === null) need('brine.injection', 'brine.nitrite');
  if (!usesCure) return missing;
  if (cure.ruleSetId === null) need('cure.ruleSetId', 'brine.verdict');
  if (slice.product === null) need('brine.product', 'brine.verdict');
  if (values.pack.problem === 'missing') need('brine.pack.strength.nitrite', 'brine.dose');
  if (values.pack.nitrateFraction === null) need('brine.pack.strength.nitrate', 'brine.nitrate');
  if (entryValue('ppm', slice.nitriteTarget) === null) need('brine.nitriteTarget', 'brine.dose');
  if (figures.readabilityG === null) need('cure.scaleReadability', 'brine.dose');
  return missing;
}

import type { PlanSlice, PlanStepKind } from '@larderwright/calc/plan';
import * as say from '#words/plan-and-cost/field-names.ts';
import { PLAN_STEP_NAMES } from '../words/plan-names.ts';

const NAMES: Readonly<Record<string, string>> = {
  'product.portions': 'portions',
  'plan.portionMass': say.theWeightOfAPortion,
  'plan.finished': say.theFinishedWeight,
  'mould.moulds': say.theMouldsFullyMeasured,
  'plan.testPoach': say.theTestPoach,
  'plan.residue': say.whatStaysOnBowlAndFiller,
  'plan.cookLoss': say.theLossInCookingAndChilling,
  'plan.endLoss': say.theLossOnEndsAndCrumbs,
  'formula.lines': say.theFormulaEveryWeightInIt,
  'plan.sundries': say.theSmallThingsTogether,
  'plan.labour': say.theHandsOnTime,
  'plan.labourRate': say.labourAnHour,
  'plan.overhead': say.energyPackagingAndTheRest,
  'plan.grossProfit': say.theGrossProfit,
  'plan.foodCost': say.theFoodCost,
  'plan.margin': say.theMargin,
};

const LINE_FIELDS: Readonly<Record<string, string>> = {
  price: say.thePriceOf,
  eachMass: say.theWeightOfOneOf,
  trimYield: say.theYieldOf,
};

/** What a step is called: the kitchen's words, or the usual ones. */
export function stepName(step: { readonly kind: PlanStepKind; readonly name: string }): string {
  return step.name.trim() || PLAN_STEP_NAMES[step.kind];
}

/**
 * An input of the plan in the middle of a sentence.
 *
 * @param lineNames names of the formula's lines by id
 */
export function planFieldName(
  field: string,
  plan: PlanSlice,
  lineNames: ReadonlyMap<string, string>,
): string {
  const [, list, id = '', name = ''] = field.split('.');
  if (list === 'lines' && name !== '')
    return `${LINE_FIELDS[name] ?? name} ${lineNames.get(id) || say.anUnnamedLine}`;
  if (list === 'steps') {
    const step = plan.steps.find((each) => each.id === id);
    return say.howLongTakes(step ? stepName(step) : id);
  }
  return NAMES[field] ?? field;
}

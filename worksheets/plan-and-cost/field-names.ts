import type { PlanSlice, PlanStepKind } from '@larderwright/calc/plan';
import { PLAN_STEP_NAMES } from '../words/plan-names.ts';

const NAMES: Readonly<Record<string, string>> = {
  'product.portions': 'portions',
  'plan.portionMass': 'the weight of a portion',
  'plan.finished': 'the finished weight',
  'mould.moulds': 'the moulds, fully measured',
  'plan.testPoach': 'the test poach',
  'plan.residue': 'what stays on bowl and filler',
  'plan.cookLoss': 'the loss in cooking and chilling',
  'plan.endLoss': 'the loss on ends and crumbs',
  'formula.lines': 'the formula, every weight in it',
  'plan.sundries': 'the small things together',
  'plan.labour': 'the hands-on time',
  'plan.labourRate': 'labour an hour',
  'plan.overhead': 'energy, packaging and the rest',
  'plan.grossProfit': 'the gross profit',
  'plan.foodCost': 'the food cost',
  'plan.margin': 'the margin',
};

const LINE_FIELDS: Readonly<Record<string, string>> = {
  price: 'the price of',
  eachMass: 'the weight of one of',
  trimYield: 'the yield of',
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
    return `${LINE_FIELDS[name] ?? name} ${lineNames.get(id) || 'an unnamed line'}`;
  if (list === 'steps') {
    const step = plan.steps.find((each) => each.id === id);
    return `how long "${step ? stepName(step) : id}" takes`;
  }
  return NAMES[field] ?? field;
}

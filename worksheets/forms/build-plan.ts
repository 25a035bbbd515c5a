import { type Assessment, type Batch, isWholeMuscle } from '@larderwright/calc/batch';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/forms/build-plan.ts';
import { legTitle } from '../batch-sheet/build/cool.ts';
import { filled, percent } from '../batch-sheet/build/filled.ts';
import type { SheetModel } from '../batch-sheet/sheet-model.ts';
import { BASIS_WORDS, FORM_WORDS } from '../salt-and-cure/limit-words.ts';
import { PLAN_WORDS } from '../words/haccp.ts';
import { AUDIENCE_NAMES, PACK_NAMES } from '../words/label-names.ts';
import { limitTemp } from '../words/limit-temp.ts';
import { type PlanSheet, planSteps } from './plan-model.ts';

const memory = (isFromMemory: boolean) => (isFromMemory ? ` [${PLAN_WORDS.fromMemory}]` : '');

/** Ceilings on what is put in, as the rule prints them. */
function cureLimit({ cure }: Assessment): string[] | null {
  const ceilings = cure.values.ceilings.filter(
    ({ limit }) => limit.substance === 'nitrite' && limit.kind === 'ingoing',
  );
  if (ceilings.length === 0) return null;
  const each = ceilings.map(({ limit }) =>
    say.mgKgOn2(
      limit.printed,
      FORM_WORDS[limit.expressedAs],
      BASIS_WORDS[limit.basis],
      memory(limit.mark === 'memory'),
    ),
  );
  return [PLAN_WORDS.cureLimit([...new Set(each)].join('; '))];
}

function cookLimit({ cook }: Assessment, model: SheetModel): string[] | null {
  const { limit, hold, ruleSet } = cook.values;
  if (!limit || !hold) return null;
  const named = say.forWord2(limitTemp(limit.stated, 'minimum').text, hold.printed);
  const shown = model.cook.action ? say.probeMustShow2(model.cook.action) : PLAN_WORDS.probeError;
  const isFromMemory = limit.mark === 'memory' || ruleSet?.mark === 'memory';
  return [`${named}, ${shown}${memory(isFromMemory)}`];
}

function coolLimit({ cool }: Assessment): string[] | null {
  const { ruleSet } = cool.values;
  if (!ruleSet) return null;
  return ruleSet.legs.map(
    (leg) => `${legTitle(leg)}${memory(leg.mark === 'memory' || ruleSet.mark === 'memory')}`,
  );
}

/** What a person wrote on the label of the batch; nothing is proposed here. */
function storeLimit({ label }: Batch): string[] | null {
  const at = label ? filled('temperature', label.storeAt, label.storeAt.unit) : null;
  const life = label ? filled('time', label.life, label.life.unit) : null;
  return at && life ? [PLAN_WORDS.storeLimit(at.text, life.text)] : null;
}

/** The plan of a batch: its own limits, and boxes for all that calc does not know. */
export function buildPlan(batch: Batch, assessment: Assessment, model: SheetModel): PlanSheet {
  const { cure, formula } = assessment;
  const begun = batch.formula.lines.length > 0;
  // Limits and figures of whole muscle are another table's: their boxes stay open.
  const isMuscle = isWholeMuscle(batch);
  const hasCure = isMuscle || batch.formula.lines.some(({ part }) => part === 'curing-salt');
  const { nitritePpmTotal } = cure.values;
  const allergens = model.warnings.allergens;
  return {
    product: model.header.product,
    family: model.header.family,
    kitchen: model.header.kitchen,
    saltOnWater: percent(formula.values.mix.saltOnWaterFraction, 1),
    nitrite: begun && nitritePpmTotal !== null ? say.mgKgOnTotal2(fixedText(nitritePpmTotal, 1, 'up')) : null,
    packing: batch.label?.pack ? PACK_NAMES[batch.label.pack] : null,
    users: batch.label?.audience ? AUDIENCE_NAMES[batch.label.audience] : null,
    beyond: batch.drying !== undefined || batch.dryCure !== undefined,
    steps: planSteps({
      cure: begun && !hasCure ? false : isMuscle ? null : cureLimit(assessment),
      grind: [
        PLAN_WORDS.grindLimit(model.temperatures.map(({ label, limit }) => `${label} ${limit}`).join(', ')),
      ],
      allergens: allergens === null ? null : [PLAN_WORDS.allergenLimit(allergens)],
      cook: cookLimit(assessment, model),
      cool: coolLimit(assessment),
      store: storeLimit(batch),
      sell: [PLAN_WORDS.labelLimit],
    }),
  };
}

import type { PlanWant, PricingMethod } from '@larderwright/calc/plan';
import type { QuantityKind, Unit } from '@larderwright/calc/quantities';
import * as say from '#words/plan-and-cost/plan-fields.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { TextField } from '../parts/text-field.tsx';
import { editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { PRICING_CHOICES, PRICING_SHARES } from '../words/plan-names.ts';
import { $plan } from './computed.ts';

const MASSES: readonly Unit[] = ['g', 'kg', 'lb', 'oz'];
const TIMES: readonly Unit[] = ['min', 'h'];

interface PlanFieldProps {
  path: string;
  label: string;
  kind: QuantityKind;
  units?: readonly Unit[];
  hint?: string;
  money?: boolean;
}

/** A number field with the findings that belong to it. */
function PlanField({ path, label, kind, units, hint, money = false }: PlanFieldProps) {
  const computed = useShared($plan);
  const currency = String(useAt('plan.currency') ?? '');
  return (
    <NumberField
      path={path}
      label={label}
      kind={kind}
      units={units}
      unitSlot={money ? <span class="field-unit">{currency || say.money}</span> : undefined}
      hint={hint}
      findings={computed.state === 'ready' ? at(computed.value.findings, path) : []}
    />
  );
}

const WANTS: readonly { value: PlanWant; label: string }[] = [
  { value: 'portions', label: say.portionsToServe },
  { value: 'finished', label: say.finishedWeightToHave },
  { value: 'moulds', label: say.mouldsToFill },
];

/** What the plan starts from, and what is lost on the way. */
export function MassFields() {
  const want = useAt('plan.want') as PlanWant;
  return (
    <>
      <div class="fields">
        <ChoiceField
          label={say.startFrom}
          value={want}
          choices={WANTS}
          onChoose={(value) => editAt('plan.want', value)}
          hint={want === 'moulds' ? say.allMouldsMouldWorksheetFilled : undefined}
        />
        {want === 'portions' ? <PlanField path="product.portions" label={say.portions} kind="count" /> : null}
        {want === 'finished' ? (
          <PlanField path="plan.finished" label={say.finishedWeight} kind="mass" units={['kg', 'g', 'lb']} />
        ) : null}
        <PlanField path="plan.portionMass" label={say.weightOfAPortion} kind="mass" units={MASSES} />
      </div>
      <div class="fields">
        <PlanField
          path="plan.cookLoss"
          label={say.lostCookingChillingFill}
          kind="fraction"
          hint={say.weighMouldBeforeAfterOwnFigure}
        />
        <PlanField path="plan.endLoss" label={say.endsCrumbsFinishedWeight} kind="fraction" />
        <PlanField path="plan.residue" label={say.leftOnBowlAndFillerOf} kind="fraction" />
        <PlanField path="plan.testPoach" label={say.forTheTestPoach} kind="mass" units={['g', 'oz']} />
      </div>
    </>
  );
}

/** Money beside the shopping list. */
export function CostFields() {
  return (
    <div class="fields">
      <TextField path="plan.currency" label={say.currency} hint={say.whatMoneyCalledHereLabelOnly} />
      <PlanField
        path="plan.sundries"
        label={say.smallThingsTogetherABatch}
        kind="money"
        money
        hint={say.everyLineMarkedOneSaltSpices}
      />
      <PlanField path="plan.labour" label={say.handsOnTime} kind="time" units={TIMES} />
      <PlanField path="plan.labourRate" label={say.labourAnHour} kind="money" money />
      <PlanField
        path="plan.overhead"
        label={say.energyPackagingRestBatch}
        kind="money"
        money
        hint={say.type0NoneBlankUnknownLeaves}
      />
    </div>
  );
}

/** How a price is found. */
export function PriceFields() {
  const method = useAt('plan.pricing') as PricingMethod;
  const share = PRICING_SHARES[method];
  return (
    <div class="fields">
      <ChoiceField
        label={say.priceBy}
        value={method}
        choices={PRICING_CHOICES}
        onChoose={(value) => editAt('plan.pricing', value)}
        hint={method === 'margin' ? say.looksFoodLabourOverhead : say.looksFoodAloneLabourOverhead}
      />
      <PlanField path={share.path} label={share.label} kind="fraction" />
      <PlanField path="plan.tax" label={say.taxOnThePrice} kind="fraction" hint={say.type0ForNone} />
    </div>
  );
}

/** What chiller and bath take. */
export function LoadFields() {
  return (
    <div class="fields">
      <PlanField
        path="plan.chillerCapacity"
        label={say.theChillerMayTakeAtOnce}
        kind="mass"
        units={['kg', 'lb']}
        hint={say.makerWarmFoodOneLoadShelf}
      />
      <PlanField path="plan.bathCapacity" label={say.mouldsTheBathOrOvenTakes} kind="count" />
    </div>
  );
}

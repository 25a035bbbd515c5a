import type { PlanWant, PricingMethod } from '@larderwright/calc/plan';
import type { QuantityKind, Unit } from '@larderwright/calc/quantities';
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
      unitSlot={money ? <span class="field-unit">{currency || 'money'}</span> : undefined}
      hint={hint}
      findings={computed.state === 'ready' ? at(computed.value.findings, path) : []}
    />
  );
}

const WANTS: readonly { value: PlanWant; label: string }[] = [
  { value: 'portions', label: 'portions to serve' },
  { value: 'finished', label: 'finished weight to have' },
  { value: 'moulds', label: 'moulds to fill' },
];

/** What the plan starts from, and what is lost on the way. */
export function MassFields() {
  const want = useAt('plan.want') as PlanWant;
  return (
    <>
      <div class="fields">
        <ChoiceField
          label="Start from"
          value={want}
          choices={WANTS}
          onChoose={(value) => editAt('plan.want', value)}
          hint={want === 'moulds' ? 'All moulds of the mould worksheet, filled.' : undefined}
        />
        {want === 'portions' ? <PlanField path="product.portions" label="Portions" kind="count" /> : null}
        {want === 'finished' ? (
          <PlanField path="plan.finished" label="Finished weight" kind="mass" units={['kg', 'g', 'lb']} />
        ) : null}
        <PlanField path="plan.portionMass" label="Weight of a portion" kind="mass" units={MASSES} />
      </div>
      <div class="fields">
        <PlanField
          path="plan.cookLoss"
          label="Lost in cooking and chilling, of the fill"
          kind="fraction"
          hint="Weigh a mould before and after: your own figure beats every range."
        />
        <PlanField path="plan.endLoss" label="Ends and crumbs, of the finished weight" kind="fraction" />
        <PlanField path="plan.residue" label="Left on bowl and filler, of the mix" kind="fraction" />
        <PlanField path="plan.testPoach" label="For the test poach" kind="mass" units={['g', 'oz']} />
      </div>
    </>
  );
}

/** Money beside the shopping list. */
export function CostFields() {
  return (
    <div class="fields">
      <TextField path="plan.currency" label="Currency" hint="What your money is called here. A label only." />
      <PlanField
        path="plan.sundries"
        label="Small things together, a batch"
        kind="money"
        money
        hint="For every line marked as one of them: salt, spices, film."
      />
      <PlanField path="plan.labour" label="Hands-on time" kind="time" units={TIMES} />
      <PlanField path="plan.labourRate" label="Labour, an hour" kind="money" money />
      <PlanField
        path="plan.overhead"
        label="Energy, packaging and the rest, a batch"
        kind="money"
        money
        hint="Type 0 for none. Blank is unknown, and leaves the full cost open."
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
        label="Price by"
        value={method}
        choices={PRICING_CHOICES}
        onChoose={(value) => editAt('plan.pricing', value)}
        hint={
          method === 'margin'
            ? 'Looks at food, labour and overhead together.'
            : 'Looks at food alone; labour and overhead must come out of what is left.'
        }
      />
      <PlanField path={share.path} label={share.label} kind="fraction" />
      <PlanField path="plan.tax" label="Tax on the price" kind="fraction" hint="Type 0 for none." />
    </div>
  );
}

/** What chiller and bath take. */
export function LoadFields() {
  return (
    <div class="fields">
      <PlanField
        path="plan.chillerCapacity"
        label="The chiller may take at once"
        kind="mass"
        units={['kg', 'lb']}
        hint="By its maker, warm food in one load. A shelf that holds it is not a chiller that cools it."
      />
      <PlanField path="plan.bathCapacity" label="Moulds the bath or oven takes at once" kind="count" />
    </div>
  );
}

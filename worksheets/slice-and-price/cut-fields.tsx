import type { PricingMethod } from '@larderwright/calc/plan';
import type { QuantityKind, Unit } from '@larderwright/calc/quantities';
import type { CutBy } from '@larderwright/calc/slicing';
import type { ComponentChildren } from 'preact';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { TextField } from '../parts/text-field.tsx';
import { editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { PRICING_CHOICES, PRICING_SHARES } from '../words/plan-names.ts';
import { $slicing } from './computed.ts';

const LENGTHS: readonly Unit[] = ['mm', 'cm', 'in'];
const MASSES: readonly Unit[] = ['g', 'kg', 'oz', 'lb'];

interface SliceFieldProps {
  path: string;
  label: string;
  kind: QuantityKind;
  units?: readonly Unit[];
  hint?: string;
  unitSlot?: ComponentChildren;
}

/** A number field with the findings that belong to it. */
function SliceField(props: SliceFieldProps) {
  const computed = useShared($slicing);
  const findings = computed.state === 'ready' ? at(computed.value.findings, props.path) : [];
  return <NumberField {...props} findings={findings} />;
}

const CUTS: readonly { value: CutBy; label: string }[] = [
  { value: 'thickness', label: 'slices of a thickness' },
  { value: 'mass', label: 'portions of a weight' },
];

/** How the finished pieces are cut. */
export function CutFields() {
  const cutBy = useAt('slicing.cutBy') as CutBy;
  return (
    <div class="fields">
      <ChoiceField
        label="Cut into"
        value={cutBy}
        choices={CUTS}
        onChoose={(value) => editAt('slicing.cutBy', value)}
      />
      <SliceField
        path="product.finished"
        label="Finished weight, all moulds, after chilling"
        kind="mass"
        units={MASSES}
        hint="Weighed. Blank: what the plan expects."
      />
      {cutBy === 'thickness' ? (
        <>
          <SliceField
            path="slicing.length"
            label="Length of a piece along the cut"
            kind="length"
            units={LENGTHS}
            hint="Blank: the inside length of the mould."
          />
          <SliceField path="slicing.thickness" label="Slice" kind="length" units={LENGTHS} />
          <SliceField path="slicing.endTrim" label="Off each end" kind="length" units={LENGTHS} />
          <SliceField
            path="slicing.kerf"
            label="Taken by the blade, each slice"
            kind="length"
            units={['mm']}
            hint="0 for a wire, about 0.5 mm for a knife: common practice, no source."
          />
          <SliceField path="slicing.slicesPerPortion" label="Slices to a portion" kind="count" />
        </>
      ) : (
        <>
          <SliceField path="slicing.packMass" label="Weight of a portion" kind="mass" units={MASSES} />
          <SliceField
            path="slicing.endLoss"
            label="Ends and crumbs, of the finished weight"
            kind="fraction"
          />
        </>
      )}
    </div>
  );
}

/** How the price is found: the same fields as in the plan. */
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
      />
      <SliceField path={share.path} label={share.label} kind="fraction" />
      <SliceField path="plan.tax" label="Tax on the price" kind="fraction" hint="Type 0 for none." />
      <TextField path="plan.currency" label="Currency" hint="What your money is called here. A label only." />
    </div>
  );
}

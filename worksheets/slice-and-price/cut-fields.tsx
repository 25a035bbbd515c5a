import type { PricingMethod } from '@larderwright/calc/plan';
import type { QuantityKind, Unit } from '@larderwright/calc/quantities';
import type { CutBy } from '@larderwright/calc/slicing';
import type { ComponentChildren } from 'preact';
import * as say from '#words/slice-and-price/cut-fields.ts';
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
  { value: 'thickness', label: say.slicesOfAThickness },
  { value: 'mass', label: say.portionsOfAWeight },
];

/** How the finished pieces are cut. */
export function CutFields() {
  const cutBy = useAt('slicing.cutBy') as CutBy;
  return (
    <div class="fields">
      <ChoiceField
        label={say.cutInto}
        value={cutBy}
        choices={CUTS}
        onChoose={(value) => editAt('slicing.cutBy', value)}
      />
      <SliceField
        path="product.finished"
        label={say.finishedWeightAllMouldsAfter}
        kind="mass"
        units={MASSES}
        hint={say.weighedBlankWhatThePlanExpects}
      />
      {cutBy === 'thickness' ? (
        <>
          <SliceField
            path="slicing.length"
            label={say.lengthOfAPieceAlongThe}
            kind="length"
            units={LENGTHS}
            hint={say.blankTheInsideLengthOfThe}
          />
          <SliceField path="slicing.thickness" label={say.slice} kind="length" units={LENGTHS} />
          <SliceField path="slicing.endTrim" label={say.offEachEnd} kind="length" units={LENGTHS} />
          <SliceField
            path="slicing.kerf"
            label={say.takenByTheBladeEachSlice}
            kind="length"
            units={['mm']}
            hint={say.n0WireAbout05Mm}
          />
          <SliceField path="slicing.slicesPerPortion" label={say.slicesToAPortion} kind="count" />
        </>
      ) : (
        <>
          <SliceField path="slicing.packMass" label={say.weightOfAPortion} kind="mass" units={MASSES} />
          <SliceField path="slicing.endLoss" label={say.endsCrumbsFinishedWeight} kind="fraction" />
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
        label={say.priceBy}
        value={method}
        choices={PRICING_CHOICES}
        onChoose={(value) => editAt('plan.pricing', value)}
      />
      <SliceField path={share.path} label={share.label} kind="fraction" />
      <SliceField path="plan.tax" label={say.taxOnThePrice} kind="fraction" hint={say.type0ForNone} />
      <TextField path="plan.currency" label={say.currency} hint={say.whatMoneyCalledHereLabelOnly} />
    </div>
  );
}

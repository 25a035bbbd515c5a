import type { Finding } from '@larderwright/calc/findings';
import { rangeIn } from '@larderwright/calc/quantities';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { editAt } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';

const TOO_LITTLE = [
  { value: 'yes', label: 'Carry it in salt, one part in ten' },
  { value: 'no', label: 'Leave it as it is' },
];

/** What every row is weighed into and on. */
export function SharedFields({ findings }: { findings: readonly Finding[] }) {
  const dilute = useAt('seasoning.diluteInSalt') === true;
  return (
    <div class="fields">
      <NumberField
        path="seasoning.batch"
        label="Total mix"
        kind="mass"
        units={['kg', 'g', 'lb']}
        hint="Everything in the bowl. Blank: the total of the formula, with this seasoning in it."
        findings={at(findings, 'seasoning.batch')}
      />
      <NumberField
        path="seasoning.scaleReadability"
        label="Smallest step of the spice scale"
        kind="mass"
        units={['g', 'mg']}
        range={rangeIn('g', 0, 100)}
        findings={at(findings, 'seasoning.scaleReadability')}
      />
      <ChoiceField
        label="Too little for the scale"
        value={dilute ? 'yes' : 'no'}
        choices={TOO_LITTLE}
        onChoose={(value) => editAt('seasoning.diluteInSalt', value === 'yes')}
        hint="Spice only. Curing salt is never carried in anything."
      />
      <NumberField
        path="seasoning.grindingLoss"
        label="Left in the mill, of whole spice"
        kind="fraction"
        hint="2 to 5 %: common practice, no source."
        findings={at(findings, 'seasoning.grindingLoss')}
      />
      <NumberField
        path="seasoning.timesTasted"
        label="Times the batch it was tasted in"
        kind="ratio"
        range={{ min: 0, max: 1000 }}
        unitSlot={<span class="field-unit">times</span>}
        hint="Above five, strong aromatics are tasted in, not just multiplied."
        findings={at(findings, 'seasoning.timesTasted')}
      />
    </div>
  );
}

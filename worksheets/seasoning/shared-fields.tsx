import type { Finding } from '@larderwright/calc/findings';
import { rangeIn } from '@larderwright/calc/quantities';
import * as say from '#words/seasoning/shared-fields.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { editAt } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';

const TOO_LITTLE = [
  { value: 'yes', label: say.carryItInSaltOnePart },
  { value: 'no', label: say.leaveItAsItIs },
];

/** What every row is weighed into and on. */
export function SharedFields({ findings }: { findings: readonly Finding[] }) {
  const dilute = useAt('seasoning.diluteInSalt') === true;
  return (
    <div class="fields">
      <NumberField
        path="seasoning.batch"
        label={say.totalMix}
        kind="mass"
        units={['kg', 'g', 'lb']}
        hint={say.everythingBowlBlankTotal}
        findings={at(findings, 'seasoning.batch')}
      />
      <NumberField
        path="seasoning.scaleReadability"
        label={say.smallestStepOfTheSpiceScale}
        kind="mass"
        units={['g', 'mg']}
        range={rangeIn('g', 0, 100)}
        findings={at(findings, 'seasoning.scaleReadability')}
      />
      <ChoiceField
        label={say.tooLittleForTheScale}
        value={dilute ? 'yes' : 'no'}
        choices={TOO_LITTLE}
        onChoose={(value) => editAt('seasoning.diluteInSalt', value === 'yes')}
        hint={say.spiceOnlyCuringSaltNever}
      />
      <NumberField
        path="seasoning.grindingLoss"
        label={say.leftInTheMillOfWhole}
        kind="fraction"
        hint={say.n2To5CommonPracticeNo}
        findings={at(findings, 'seasoning.grindingLoss')}
      />
      <NumberField
        path="seasoning.timesTasted"
        label={say.timesTheBatchItWasTasted}
        kind="ratio"
        range={{ min: 0, max: 1000 }}
        unitSlot={<span class="field-unit">{say.times}</span>}
        hint={say.aboveFiveStrongAromaticsTasted}
        findings={at(findings, 'seasoning.timesTasted')}
      />
    </div>
  );
}

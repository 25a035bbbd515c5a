import type { Finding } from '@larderwright/calc/findings';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { editAt } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';
import { CURE_RULE_SET_NAMES } from '../words/cure-rule-set-names.ts';
import { choicesOf, FINISH_NAMES, PRODUCT_NAMES } from '../words/whole-muscle-names.ts';

/** Where the slice of a worksheet on whole muscle stands in the batch. */
export type MuscleSlice = 'dryCure' | 'brine';

interface MuscleProps {
  slice: MuscleSlice;
  findings: readonly Finding[];
}

/** Whose rule, which product of it, and what the scale can show. */
export function MuscleRuleFields({ slice, findings }: MuscleProps) {
  const ruleSetId = useAt('cure.ruleSetId');
  const product = useAt(`${slice}.product`);
  const finish = useAt(`${slice}.finish`);
  const isTraditional = useAt(`${slice}.isTraditional`) === true;
  const choose = (path: string) => (value: string) => editAt(path, value === '' ? null : value);
  return (
    <div class="fields">
      <ChoiceField
        label="Whose rule on nitrite"
        value={typeof ruleSetId === 'string' ? ruleSetId : ''}
        empty="Not chosen: no limit can be judged"
        choices={CURE_RULE_SET_NAMES}
        onChoose={choose('cure.ruleSetId')}
        hint="The one your authority enforces. Rules are never blended."
        findings={at(findings, 'cure.ruleSetId')}
      />
      <ChoiceField
        label="What it is"
        value={typeof product === 'string' ? product : ''}
        empty="Not chosen"
        choices={choicesOf(PRODUCT_NAMES)}
        onChoose={choose(`${slice}.product`)}
        hint="Bacon has limits of its own."
        findings={at(findings, `${slice}.product`)}
      />
      <ChoiceField
        label="How it is eaten"
        value={typeof finish === 'string' ? finish : ''}
        empty="Not chosen"
        choices={choicesOf(FINISH_NAMES)}
        onChoose={choose(`${slice}.finish`)}
        findings={at(findings, `${slice}.finish`)}
      />
      <ChoiceField
        label="A traditional cure that the rule lists by name"
        value={isTraditional ? 'yes' : 'no'}
        choices={[
          { value: 'no', label: 'No' },
          { value: 'yes', label: 'Yes' },
        ]}
        onChoose={(value) => editAt(`${slice}.isTraditional`, value === 'yes')}
        hint="Only for a name in the law itself. In doubt: no."
      />
      <NumberField
        path="cure.scaleReadability"
        label="Smallest step of the scale"
        kind="mass"
        range={{ min: 0, max: 100 }}
        gramsOnly
        hint="What the last digit moves by: 0.1 or 1, say."
        findings={at(findings, 'cure.scaleReadability')}
      />
    </div>
  );
}

/** The pack of the curing salt. Its strength has no default: a guess here is tenfold wrong. */
export function PackFields({ slice, findings }: MuscleProps) {
  const path = `${slice}.pack`;
  return (
    <div class="fields cure-strength">
      <NumberField
        path={`${path}.strength.nitrite`}
        label="Sodium nitrite in it, by the pack"
        kind="fraction"
        hint="Read it off this very pack. Two curing salts of the same colour can differ tenfold."
        findings={at(findings, `${path}.strength.nitrite`)}
      />
      <NumberField
        path={`${path}.strength.nitrate`}
        label="Nitrate in it, by the pack"
        kind="fraction"
        hint="Type 0 when the pack lists none. Blank is unknown."
        findings={at(findings, `${path}.strength.nitrate`)}
      />
    </div>
  );
}

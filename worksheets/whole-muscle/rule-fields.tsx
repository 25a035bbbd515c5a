import type { Finding } from '@larderwright/calc/findings';
import * as say from '#words/whole-muscle/rule-fields.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { RuleSetField } from '../parts/rule-set-field.tsx';
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
  const product = useAt(`${slice}.product`);
  const finish = useAt(`${slice}.finish`);
  const isTraditional = useAt(`${slice}.isTraditional`) === true;
  const choose = (path: string) => (value: string) => editAt(path, value === '' ? null : value);
  return (
    <div class="fields">
      <RuleSetField
        subject="cure"
        label={say.whoseRuleOnNitrite}
        empty={say.notChosenNoLimitCanBe}
        choices={CURE_RULE_SET_NAMES}
        hint={say.oneAuthorityEnforcesRulesNever}
        findings={at(findings, 'cure.ruleSetId')}
      />
      <ChoiceField
        label={say.whatItIs}
        value={typeof product === 'string' ? product : ''}
        empty={say.notChosen}
        choices={choicesOf(PRODUCT_NAMES)}
        onChoose={choose(`${slice}.product`)}
        hint={say.baconHasLimitsOfItsOwn}
        findings={at(findings, `${slice}.product`)}
      />
      <ChoiceField
        label={say.howItIsEaten}
        value={typeof finish === 'string' ? finish : ''}
        empty={say.notChosen}
        choices={choicesOf(FINISH_NAMES)}
        onChoose={choose(`${slice}.finish`)}
        findings={at(findings, `${slice}.finish`)}
      />
      <ChoiceField
        label={say.traditionalCureRuleListsName}
        value={isTraditional ? 'yes' : 'no'}
        choices={[
          { value: 'no', label: say.no },
          { value: 'yes', label: say.yes },
        ]}
        onChoose={(value) => editAt(`${slice}.isTraditional`, value === 'yes')}
        hint={say.onlyNameLawItselfDoubtNo}
      />
      <NumberField
        path="cure.scaleReadability"
        label={say.smallestStepOfTheScale}
        kind="mass"
        range={{ min: 0, max: 100 }}
        gramsOnly
        hint={say.whatLastDigitMoves01}
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
        label={say.sodiumNitriteInItByThe}
        kind="fraction"
        hint={say.readOffVeryPackTwoCuring}
        findings={at(findings, `${path}.strength.nitrite`)}
      />
      <NumberField
        path={`${path}.strength.nitrate`}
        label={say.nitrateInItByThePack}
        kind="fraction"
        hint={say.type0WhenPackListsNone}
        findings={at(findings, `${path}.strength.nitrate`)}
      />
    </div>
  );
}

import type { Unconfirmed } from '@larderwright/calc/batch';
import type { Finding } from '@larderwright/calc/findings';
import * as say from '#words/parts/rule-set-field.ts';
import { chooseRuleSet, confirmRuleSet } from '../state/rule-set-choice.ts';
import { $batch } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { type Choice, ChoiceField } from './choice-field.tsx';

interface RuleSetFieldProps {
  subject: Unconfirmed['subject'];
  label: string;
  empty: string;
  choices: readonly Choice[];
  hint: string;
  findings: readonly Finding[];
}

/** Whose rule. One that this device's settings put in waits for a person to say that it applies. */
export function RuleSetField({ subject, hint, ...rest }: RuleSetFieldProps) {
  const { cure, process, ruleSetDefaults } = useShared($batch);
  const ids = { cure: cure.ruleSetId, cook: process.cookRuleSetId, cool: process.coolRuleSetId };
  const id = ids[subject];
  const isDefault = id !== null && ruleSetDefaults?.[subject] === true;
  return (
    <ChoiceField
      {...rest}
      value={id ?? ''}
      isDefault={isDefault}
      onChoose={(chosen) => chooseRuleSet(subject, chosen || null)}
      hint={
        isDefault ? (
          <>
            {hint}
            {say.fromTheSettings}
            <button type="button" onClick={() => confirmRuleSet(subject)}>
              {say.itAppliesHere}
            </button>
          </>
        ) : (
          hint
        )
      }
    />
  );
}

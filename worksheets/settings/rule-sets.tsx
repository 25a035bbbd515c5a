import { ChoiceField } from '../parts/choice-field.tsx';
import { $kitchen, changeKitchen } from '../state/kitchen.ts';
import { useShared } from '../state/use-shared.ts';
import { COOK_RULE_SET_NAMES } from '../words/cook-rule-set-names.ts';
import { COOL_RULE_SET_NAMES } from '../words/cool-rule-set-names.ts';
import { CURE_RULE_SET_NAMES } from '../words/cure-rule-set-names.ts';
import { SETTINGS } from '../words/settings.ts';

const FIELDS = [
  { key: 'cureRuleSetId', label: SETTINGS.cure, choices: CURE_RULE_SET_NAMES },
  { key: 'cookRuleSetId', label: SETTINGS.cook, choices: COOK_RULE_SET_NAMES },
  { key: 'coolRuleSetId', label: SETTINGS.cool, choices: COOL_RULE_SET_NAMES },
] as const;

/** Whose rules a new batch begins with. */
export function RuleSets() {
  const { kitchen } = useShared($kitchen);
  return (
    <section aria-labelledby="rules">
      <h2 id="rules">{SETTINGS.rules}</h2>
      <p class="say">{SETTINGS.rulesAbout}</p>
      <div class="plan">
        {FIELDS.map(({ key, label, choices }) => (
          <ChoiceField
            key={key}
            label={label}
            value={kitchen[key] ?? ''}
            empty={SETTINGS.noRule}
            choices={choices}
            onChoose={(id) => changeKitchen((now) => ({ ...now, [key]: id || null }))}
          />
        ))}
      </div>
    </section>
  );
}

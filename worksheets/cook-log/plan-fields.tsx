import * as say from '#words/cook-log/plan-fields.ts';
import { at } from '../parts/finding-list.tsx';
import { later } from '../parts/later.tsx';
import { RuleSetField } from '../parts/rule-set-field.tsx';
import { useShared } from '../state/use-shared.ts';
import { COOK_RULE_SET_NAMES } from '../words/cook-rule-set-names.ts';
import { $cook } from './computed.ts';

const LimitFields = later(() => import('./limit-fields.tsx').then((m) => m.LimitFields));

/** Fields of the plan that show their own findings. */
export const PLAN_FIELDS: readonly string[] = ['process.cookRuleSetId', 'process.cookLimitId'];

/** The cooking rule set and the one limit the plan names. */
export function PlanFields() {
  const computed = useShared($cook);
  return (
    <>
      <div class="plan">
        <RuleSetField
          subject="cook"
          label={say.whoseRuleOnCooking}
          empty={say.notChosenNoLimitCanBe}
          choices={COOK_RULE_SET_NAMES}
          hint={say.oneAuthorityEnforcesRulesNever}
          findings={computed.state === 'ready' ? at(computed.value.findings, 'process.cookRuleSetId') : []}
        />
      </div>
      <LimitFields meanwhile={<p class="say">{say.oneLimitCFHeldChoose}</p>} />
    </>
  );
}

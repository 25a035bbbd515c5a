import type { Finding } from '@larderwright/calc/findings';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { TextField } from '../parts/text-field.tsx';
import { editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { CURE_RULE_SET_NAMES } from '../words/cure-rule-set-names.ts';
import { $cure } from './computed.ts';

/** Fields of this page that show their own findings. */
export const OWN_FIELDS: readonly string[] = [
  'cure.ruleSetId',
  'cure.nitriteTarget',
  'cure.scaleReadability',
  'cure.weighedBy',
  'cure.checkedBy',
  'cure.residual.found',
  'formula.saltTarget',
];

function useFindings(): readonly Finding[] {
  const computed = useShared($cure);
  return computed.state === 'ready' ? computed.value.findings : [];
}

/** Whose rule, what is wanted, and what the scale can show. */
export function RuleFields() {
  const ruleSetId = useAt('cure.ruleSetId');
  const findings = useFindings();
  return (
    <div class="fields">
      <ChoiceField
        label="Whose rule on nitrite"
        value={typeof ruleSetId === 'string' ? ruleSetId : ''}
        empty="Not chosen: no limit can be judged"
        choices={CURE_RULE_SET_NAMES}
        onChoose={(id) => editAt('cure.ruleSetId', id === '' ? null : id)}
        hint="The one your authority enforces. Rules are never blended."
        findings={at(findings, 'cure.ruleSetId')}
      />
      <NumberField
        path="cure.nitriteTarget"
        label="Nitrite wanted, as sodium nitrite"
        kind="ppm"
        range={{ min: 0, max: 1000 }}
        hint="Put in at mixing, on the weight that rule counts on."
        findings={at(findings, 'cure.nitriteTarget')}
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

/** How much salt is wanted from all sources. */
export function SaltTargetField() {
  const path = 'formula.saltTarget';
  return (
    <div class="fields">
      <NumberField
        path={path}
        label="Salt wanted, of everything in the bowl"
        kind="fraction"
        range={{ min: 0, max: 0.2 }}
        hint="From all sources together, curing salt and bacon included. A lining counts in the slice, not here."
        findings={at(useFindings(), path)}
      />
    </div>
  );
}

/** Who weighed and who checked. */
export function PeopleFields() {
  const findings = useFindings();
  return (
    <div class="fields">
      <TextField path="cure.weighedBy" label="Weighed by" findings={at(findings, 'cure.weighedBy')} />
      <TextField path="cure.checkedBy" label="Checked by" findings={at(findings, 'cure.checkedBy')} />
    </div>
  );
}

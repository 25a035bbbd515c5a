import type { ProcessStep } from '@larderwright/calc/process';
import { at } from '../parts/finding-list.tsx';
import { MomentBox } from '../parts/moment-box.tsx';
import { RuleSetField } from '../parts/rule-set-field.tsx';
import { changeStep, FIRST } from '../readings/edits.ts';
import { useAt } from '../state/use-shared.ts';
import { COOL_RULE_SET_NAMES } from '../words/cool-rule-set-names.ts';
import { useChillFindings } from './press-fields.tsx';

/** Whose rule on cooling, and when the heat ended: the clock of some rules starts there. */
export function CoolRuleFields() {
  const findings = useChillFindings();
  return (
    <div class="plan">
      <RuleSetField
        subject="cool"
        label="Whose rule on cooling"
        empty="Not chosen: no leg can be judged"
        choices={COOL_RULE_SET_NAMES}
        hint="The one your authority enforces. Rules are never blended, and passing one says nothing of another."
        findings={at(findings, 'process.coolRuleSetId')}
      />
      <HeatEndField />
    </div>
  );
}

function HeatEndField() {
  const steps = useAt('process.steps') as readonly ProcessStep[];
  const last = steps.findLast((step) => step.kind !== 'chill');
  const findings = useChillFindings();
  return (
    <MomentBox
      label="Out of the heat"
      iso={last?.endedAt ?? null}
      offerNow
      onMoment={(endedAt) => changeStep(last?.id ?? FIRST, last?.kind ?? 'cook', { endedAt })}
      hint="End of the last heating, as on the cook log."
      findings={last ? at(findings, `process.steps.${last.id}.endedAt`) : []}
    />
  );
}

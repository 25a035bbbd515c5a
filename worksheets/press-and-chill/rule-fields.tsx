import type { ProcessStep } from '@larderwright/calc/process';
import * as say from '#words/press-and-chill/rule-fields.ts';
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
        label={say.whoseRuleOnCooling}
        empty={say.notChosenNoLegCanBe}
        choices={COOL_RULE_SET_NAMES}
        hint={say.oneAuthorityEnforcesRulesNever}
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
      label={say.outOfTheHeat}
      iso={last?.endedAt ?? null}
      offerNow
      onMoment={(endedAt) => changeStep(last?.id ?? FIRST, last?.kind ?? 'cook', { endedAt })}
      hint={say.endLastHeatingCookLog}
      findings={last ? at(findings, `process.steps.${last.id}.endedAt`) : []}
    />
  );
}

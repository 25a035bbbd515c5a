import type { Finding } from '@larderwright/calc/findings';
import * as say from '#words/salt-and-cure/cure-fields.ts';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { RuleSetField } from '../parts/rule-set-field.tsx';
import { TextField } from '../parts/text-field.tsx';
import { useShared } from '../state/use-shared.ts';
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
  const findings = useFindings();
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
      <NumberField
        path="cure.nitriteTarget"
        label={say.nitriteWantedAsSodiumNitrite}
        kind="ppm"
        range={{ min: 0, max: 1000 }}
        hint={say.putMixingWeightRuleCounts}
        findings={at(findings, 'cure.nitriteTarget')}
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

/** How much salt is wanted from all sources. */
export function SaltTargetField() {
  const path = 'formula.saltTarget';
  return (
    <div class="fields">
      <NumberField
        path={path}
        label={say.saltWantedEverythingBowl}
        kind="fraction"
        range={{ min: 0, max: 0.2 }}
        hint={say.allSourcesTogetherCuringSalt}
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
      <TextField path="cure.weighedBy" label={say.weighedBy} findings={at(findings, 'cure.weighedBy')} />
      <TextField path="cure.checkedBy" label={say.checkedBy} findings={at(findings, 'cure.checkedBy')} />
    </div>
  );
}

import { newCookPlanSlice } from '@larderwright/calc/cook-plan';
import type { Finding } from '@larderwright/calc/findings';
import * as say from '#words/cook-plan/CookPlan.ts';
import { PlanFields } from '../cook-log/plan-fields.tsx';
import { at } from '../parts/finding-list.tsx';
import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { NotYet } from '../parts/not-yet.tsx';
import { CardDesk } from '../parts/print-card.tsx';
import { RuleSetField } from '../parts/rule-set-field.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { Places } from '../readings/places.tsx';
import { provideSlice } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { COOK_PLAN_TRUST } from '../words/cook-plan-names.ts';
import { COOL_RULE_SET_NAMES } from '../words/cool-rule-set-names.ts';
import { AddChill, ChillList } from './chill-list.tsx';
import { $cookPlan } from './computed.ts';
import { AimFields, HeatFields, MouldFields, RestFields } from './fields.tsx';
import { OvenFields } from './oven-fields.tsx';
import { PlanCard } from './plan-card.tsx';

provideSlice('cookPlan', newCookPlanSlice);

const Prediction = later(() => import('./prediction.tsx').then((m) => m.Prediction));
const SectionView = later(() => import('./section.tsx').then((m) => m.SectionView));
const WhatIf = later(() => import('./what-if.tsx').then((m) => m.WhatIf));

const PLACES = [
  ['mould', say.mould],
  ['heat', say.heat],
  ['aim', say.limit],
  ['cold', say.chill],
  ['predicted', say.predicted],
  ['cut', say.cut],
  ['what-if', say.whatIf],
] as const;

/** Cook plan: what the core will do from the first warm degree to the last cold one, before it is cooked. */
export default function CookPlan({ links, standing }: { links: SiteLinks; standing: string }) {
  const computed = useShared($cookPlan);
  const findings = computed.state === 'ready' ? computed.value.judge(null).findings : [];
  return (
    <WorksheetFrame links={links}>
      <Places places={PLACES} />
      <section aria-labelledby="mould">
        <h2 id="mould">{say.theMouldAndWhatIsIn}</h2>
        <MouldFields findings={findings} />
      </section>
      <section aria-labelledby="heat">
        <h2 id="heat">{say.theHeat}</h2>
        <HeatFields findings={findings} />
        <OvenFields findings={findings} />
      </section>
      <section aria-labelledby="aim">
        <h2 id="aim">{say.howFar}</h2>
        <PlanFields />
        <AimFields findings={findings} />
      </section>
      <section aria-labelledby="cold">
        <h2 id="cold">{say.restPressAndChill}</h2>
        <RestFields findings={findings} />
        <ChillList findings={findings} />
        <AddChill />
        <CoolRule findings={findings} />
      </section>
      <section aria-labelledby="predicted">
        <h2 id="predicted">{say.whatItPredicts}</h2>
        <p class="say">
          <strong>{COOK_PLAN_TRUST}</strong>
        </p>
        <Prediction meanwhile={<NotYet what={say.theCurveNotYetComputed} />} />
      </section>
      <section aria-labelledby="cut">
        <h2 id="cut">{say.theCutThroughTheMiddle}</h2>
        <SectionView meanwhile={<NotYet what={say.theCutNotYetComputed} />} />
      </section>
      <section aria-labelledby="what-if">
        <h2 id="what-if">{say.whatIf}</h2>
        <WhatIf meanwhile={<NotYet />} />
      </section>
      <CardDesk about={say.planOvenEveryInputPredicted}>
        {(paper) => <PlanCard paper={paper} standing={standing} />}
      </CardDesk>
    </WorksheetFrame>
  );
}

function CoolRule({ findings }: { findings: readonly Finding[] }) {
  return (
    <div class="plan">
      <RuleSetField
        subject="cool"
        label={say.whoseRuleOnCooling}
        empty={say.notChosenNoLegCanBe}
        choices={COOL_RULE_SET_NAMES}
        hint={say.theOneYourAuthorityEnforces}
        findings={at(findings, 'process.coolRuleSetId')}
      />
    </div>
  );
}

import { newPlanSlice } from '@larderwright/calc/plan';
import * as say from '#words/plan-and-cost/PlanAndCost.ts';
import { BlankForm } from '../parts/blank-form.tsx';
import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { NotYet } from '../parts/not-yet.tsx';
import { CardDesk } from '../parts/print-card.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { provideSlice } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { AddStep, ServingField } from './add-step.tsx';
import { $plan } from './computed.ts';
import { PlanCard } from './plan-card.tsx';
import { CostFields, LoadFields, MassFields, PriceFields } from './plan-fields.tsx';

const MassAnswers = later(() => import('./mass-answers.tsx').then((m) => m.MassAnswers));
const Shopping = later(() => import('./shopping.tsx').then((m) => m.Shopping));
const CostAnswers = later(() => import('./cost-answers.tsx').then((m) => m.CostAnswers));
const PriceAnswers = later(() => import('./cost-answers.tsx').then((m) => m.PriceAnswers));
const Steps = later(() => import('./steps.tsx').then((m) => m.Steps));
const LoadAnswers = later(() => import('./load-answers.tsx').then((m) => m.LoadAnswers));

provideSlice('plan', newPlanSlice);

/** Plan and cost: how much to make and to buy, what it costs, what to ask, when to begin. */
export default function PlanAndCost({ links, standing }: { links: SiteLinks; standing: string }) {
  const computed = useShared($plan);
  const ready = computed.state === 'ready' ? computed.value : null;
  return (
    <WorksheetFrame links={links}>
      <section aria-labelledby="how-much">
        <h2 id="how-much">{say.howMuchToMake}</h2>
        <MassFields />
        <MassAnswers meanwhile={<NotYet what={say.weightsNotYetComputed} />} />
      </section>
      <section aria-labelledby="to-buy">
        <h2 id="to-buy">{say.whatToBuy}</h2>
        <Shopping
          meanwhile={
            <BlankForm
              caption={say.shoppingList}
              columns={[say.line, say.intoTheBowlG, say.yieldWord, say.toBuy, say.price, say.cost]}
              rows={14}
            />
          }
        />
      </section>
      <section aria-labelledby="costs">
        <h2 id="costs">{say.whatItCosts}</h2>
        <CostFields />
        <CostAnswers meanwhile={<NotYet what={say.costsNotYetComputed} />} />
      </section>
      <section aria-labelledby="price">
        <h2 id="price">{say.whatToAskForIt}</h2>
        <PriceFields />
        <PriceAnswers meanwhile={<NotYet what={say.priceNotYetComputed} />} />
      </section>
      <section aria-labelledby="when">
        <h2 id="when">{say.whenToBegin}</h2>
        <ServingField />
        <Steps
          meanwhile={
            <BlankForm
              caption={say.stepsBackFromTheTable}
              columns={[say.step, say.atLeast, say.atMost, say.beginBy, say.done]}
              rows={11}
            />
          }
        />
        <AddStep />
      </section>
      <section aria-labelledby="fits">
        <h2 id="fits">{say.whetherItFits}</h2>
        <LoadFields />
        <LoadAnswers meanwhile={<NotYet what={say.chillerAndBathNotYetComputed} />} />
      </section>
      <CardDesk about={say.shoppingListCostsTimelineOne}>
        {(paper) => <PlanCard computed={ready} paper={paper} standing={standing} />}
      </CardDesk>
    </WorksheetFrame>
  );
}

import { newPlanSlice } from '@larderwright/calc/plan';
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
        <h2 id="how-much">How much to make</h2>
        <MassFields />
        <MassAnswers meanwhile={<NotYet what="Weights: not yet computed" />} />
      </section>
      <section aria-labelledby="to-buy">
        <h2 id="to-buy">What to buy</h2>
        <Shopping
          meanwhile={
            <BlankForm
              caption="Shopping list"
              columns={['Line', 'Into the bowl, g', 'Yield, %', 'To buy', 'Price', 'Cost']}
              rows={14}
            />
          }
        />
      </section>
      <section aria-labelledby="costs">
        <h2 id="costs">What it costs</h2>
        <CostFields />
        <CostAnswers meanwhile={<NotYet what="Costs: not yet computed" />} />
      </section>
      <section aria-labelledby="price">
        <h2 id="price">What to ask for it</h2>
        <PriceFields />
        <PriceAnswers meanwhile={<NotYet what="Price: not yet computed" />} />
      </section>
      <section aria-labelledby="when">
        <h2 id="when">When to begin</h2>
        <ServingField />
        <Steps
          meanwhile={
            <BlankForm
              caption="Steps back from the table"
              columns={['Step', 'At least', 'At most', 'Begin by', 'Done']}
              rows={11}
            />
          }
        />
        <AddStep />
      </section>
      <section aria-labelledby="fits">
        <h2 id="fits">Whether it fits</h2>
        <LoadFields />
        <LoadAnswers meanwhile={<NotYet what="Chiller and bath: not yet computed" />} />
      </section>
      <CardDesk about="Shopping list, costs and timeline on one card, with boxes to tick.">
        {(paper) => <PlanCard computed={ready} paper={paper} standing={standing} />}
      </CardDesk>
    </WorksheetFrame>
  );
}

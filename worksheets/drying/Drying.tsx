import { newDryingSlice } from '@larderwright/calc/drying';
import * as say from '#words/drying/Drying.ts';
import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { NotYet } from '../parts/not-yet.tsx';
import { CardDesk } from '../parts/print-card.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { provideSlice } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { Cards } from './cards.tsx';
import { $drying } from './computed.ts';
import { Fermentation } from './fermentation.tsx';
import { LaboratoryFields, PlanFields, StartFields, TrichinaFields, WeightFields } from './lot-fields.tsx';
import { PlanStop } from './plan-stop.tsx';

provideSlice('drying', newDryingSlice);

const WeightAnswers = later(() => import('./answers.tsx').then((m) => m.WeightAnswers));
const Estimates = later(() => import('./answers.tsx').then((m) => m.Estimates));
const Measured = later(() => import('./answers.tsx').then((m) => m.Measured));
const TrichinaAnswer = later(() => import('./answers.tsx').then((m) => m.TrichinaAnswer));
const Verdicts = later(() => import('./verdicts.tsx').then((m) => m.Verdicts));

/** Ferment and dry: figures for a specialist's plan, which is asked for first. */
export default function Drying({ links, standing }: { links: SiteLinks; standing: string }) {
  const computed = useShared($drying);
  const findings = computed.state === 'ready' ? computed.value.findings : [];
  const kind = useAt('drying.kind');
  return (
    <WorksheetFrame links={links}>
      <PlanStop />
      <section aria-labelledby="the-plan">
        <h2 id="the-plan">{say.whatAndByWhichPlan}</h2>
        <PlanFields />
      </section>
      {kind === 'dried-muscle' ? null : (
        <section aria-labelledby="fermentation">
          <h2 id="fermentation">{say.fermentationDegreeHoursToPh5}</h2>
          <Fermentation />
        </section>
      )}
      <section aria-labelledby="weight">
        <h2 id="weight">{say.weightLost}</h2>
        <WeightFields findings={findings} />
        <WeightAnswers meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="estimates">
        <h2 id="estimates">{say.saltAndWaterEstimated}</h2>
        <StartFields findings={findings} />
        <Estimates meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="laboratory">
        <h2 id="laboratory">{say.measuredByALaboratory}</h2>
        <LaboratoryFields findings={findings} />
        <Measured meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="trichinella">
        <h2 id="trichinella">{say.dryingRoomAgainstTrichinella}</h2>
        <p class="say">{say.oneUnitedStatesWaysPorkCasing}</p>
        <TrichinaFields findings={findings} />
        <TrichinaAnswer meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="limits">
        <h2 id="limits">{say.whatCanBeJudged}</h2>
        <Verdicts meanwhile={<NotYet what={say.cannotTellNothingOnTheBench} />} />
      </section>
      <CardDesk about={say.cardLotPlanChamberWeights}>
        {(paper) => <Cards paper={paper} standing={standing} />}
      </CardDesk>
    </WorksheetFrame>
  );
}

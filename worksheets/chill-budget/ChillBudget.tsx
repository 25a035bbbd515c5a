import { newChillBudgetSlice } from '@larderwright/calc/chill-budget';
import * as say from '#words/chill-budget/ChillBudget.ts';
import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { NotYet } from '../parts/not-yet.tsx';
import { CardDesk } from '../parts/print-card.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { provideSlice } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { $chillBudget } from './computed.ts';
import { FreezerFields, LimitFields, RoomFields } from './limit-fields.tsx';
import { AddLot, LotList } from './lots.tsx';
import { AddPass, PassList } from './passes.tsx';
import { TempCard } from './temp-card.tsx';

provideSlice('chillBudget', newChillBudgetSlice);

const FromFormula = later(() => import('./from-formula.tsx').then((m) => m.FromFormula));
const Steps = later(() => import('./steps.tsx').then((m) => m.Steps));
const IceAnswers = later(() => import('./ice-answers.tsx').then((m) => m.IceAnswers));
const Margins = later(() => import('./margins.tsx').then((m) => m.Margins));
const Temper = later(() => import('./temper.tsx').then((m) => m.Temper));

/** Grind and mix: how warm the mix ends, what ice or chill keeps it cold, and how long there is. */
export default function ChillBudget({ links, standing }: { links: SiteLinks; standing: string }) {
  const computed = useShared($chillBudget);
  const ready = computed.state === 'ready' ? computed.value : null;
  const findings = ready?.findings ?? [];
  return (
    <WorksheetFrame links={links}>
      <section aria-labelledby="goes-in">
        <h2 id="goes-in">{say.whatGoesInAndHowCold}</h2>
        <LotList findings={findings} />
        <AddLot />
        <FromFormula />
      </section>
      <section aria-labelledby="passes">
        <h2 id="passes">{say.passesThroughTheMachine}</h2>
        <PassList findings={findings} />
        <AddPass />
      </section>
      <section aria-labelledby="the-end">
        <h2 id="the-end">{say.howWarmItEnds}</h2>
        <LimitFields findings={findings} />
        <Steps meanwhile={<NotYet what={say.temperaturesMixNotYetComputed} />} />
      </section>
      <section aria-labelledby="ice">
        <h2 id="ice">{say.iceOrAColderStart}</h2>
        <IceAnswers meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="minutes">
        <h2 id="minutes">{say.minutesThereAre}</h2>
        <RoomFields findings={findings} />
        <Margins meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="tempering">
        <h2 id="tempering">{say.cubesInTheFreezer}</h2>
        <FreezerFields findings={findings} />
        <Temper meanwhile={<NotYet />} />
      </section>
      <CardDesk about={say.cardGrinderWhatEachStepShould}>
        {(paper) => <TempCard computed={ready} paper={paper} standing={standing} />}
      </CardDesk>
    </WorksheetFrame>
  );
}

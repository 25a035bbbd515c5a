import { newGeleeSlice } from '@larderwright/calc/gelee';
import * as say from '#words/gelee/Gelee.ts';
import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { NotYet } from '../parts/not-yet.tsx';
import { CardDesk } from '../parts/print-card.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { provideSlice } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { $gelee } from './computed.ts';
import { FruitTicks } from './fruit-ticks.tsx';
import { JellyCard } from './jelly-card.tsx';
import { GelatineFields, LiquidFields, PouringFields, SetFields } from './jelly-fields.tsx';

provideSlice('gelee', newGeleeSlice);

const Weights = later(() => import('./answers.tsx').then((m) => m.Weights));
const UnderCrust = later(() => import('./answers.tsx').then((m) => m.UnderCrust));

/** Jelly strength: what to weigh by both rules between blooms, and the jelly a pie takes. */
export default function Gelee({ links, standing }: { links: SiteLinks; standing: string }) {
  const computed = useShared($gelee);
  const findings = computed.state === 'ready' ? computed.value.findings : [];
  const agar = useAt('gelee.gelling') === 'agar';
  return (
    <WorksheetFrame links={links}>
      <section aria-labelledby="what-is-set">
        <h2 id="what-is-set">{say.whatIsSetAndHowFirm}</h2>
        <LiquidFields findings={findings} />
      </section>
      {agar ? null : (
        <>
          <section aria-labelledby="at-hand">
            <h2 id="at-hand">{say.gelatineAtHand}</h2>
            <GelatineFields findings={findings} />
          </section>
          <section aria-labelledby="weakens">
            <h2 id="weakens">{say.whatChangesTheSet}</h2>
            <SetFields findings={findings} />
            <FruitTicks findings={findings} />
          </section>
        </>
      )}
      <section aria-labelledby="to-weigh">
        <h2 id="to-weigh">{say.toWeigh}</h2>
        <Weights meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="under-crust">
        <h2 id="under-crust">{say.underACrustOrRoundA}</h2>
        <PouringFields findings={findings} />
        <UnderCrust meanwhile={<NotYet />} />
      </section>
      <CardDesk about={say.cardPotWhatWeighBothRules}>
        {(paper) => <JellyCard paper={paper} standing={standing} />}
      </CardDesk>
    </WorksheetFrame>
  );
}

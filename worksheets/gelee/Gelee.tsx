import { newGeleeSlice } from '@larderwright/calc/gelee';
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
        <h2 id="what-is-set">What is set, and how firm</h2>
        <LiquidFields findings={findings} />
      </section>
      {agar ? null : (
        <>
          <section aria-labelledby="at-hand">
            <h2 id="at-hand">Gelatine at hand</h2>
            <GelatineFields findings={findings} />
          </section>
          <section aria-labelledby="weakens">
            <h2 id="weakens">What changes the set</h2>
            <SetFields findings={findings} />
            <FruitTicks findings={findings} />
          </section>
        </>
      )}
      <section aria-labelledby="to-weigh">
        <h2 id="to-weigh">To weigh</h2>
        <Weights meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="under-crust">
        <h2 id="under-crust">Under a crust, or round a pâté</h2>
        <PouringFields findings={findings} />
        <UnderCrust meanwhile={<NotYet />} />
      </section>
      <CardDesk about="A card for the pot: what to weigh by both rules, the plate test, the pouring.">
        {(paper) => <JellyCard paper={paper} standing={standing} />}
      </CardDesk>
    </WorksheetFrame>
  );
}

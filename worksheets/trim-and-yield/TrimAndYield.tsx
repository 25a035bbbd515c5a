import { newYieldSlice } from '@larderwright/calc/yield';
import * as say from '#words/trim-and-yield/TrimAndYield.ts';
import { BlankForm } from '../parts/blank-form.tsx';
import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { CardDesk } from '../parts/print-card.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { $life, provideSlice } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { $yield } from './computed.ts';
import { TestCard } from './test-card.tsx';
import { addTest } from './test-edits.ts';

const Tests = later(() => import('./tests.tsx').then((m) => m.Tests));

provideSlice('yield', newYieldSlice);

/** Trim and yield test: what is left of a purchase, how sure that is, and what the usable kilogram costs. */
export default function TrimAndYield({ links, standing }: { links: SiteLinks; standing: string }) {
  const waking = useShared($life) === 'waking';
  const computed = useShared($yield);
  const ready = computed.state === 'ready' ? computed.value : null;
  return (
    <WorksheetFrame links={links}>
      <section aria-labelledby="tests">
        <h2 id="tests">{say.trimTests}</h2>
        <p class="say">{say.weighPieceBoughtTrimAlwaysDo}</p>
        <Tests
          meanwhile={
            <BlankForm
              caption={say.oneCutThreeTrials}
              columns={[say.pile, say.trial1G, say.trial2G, say.trial3G, say.share, say.worthAKg]}
              rows={8}
            />
          }
        />
        <p class="buttons">
          <button type="button" class="press-first" disabled={waking} onClick={addTest}>
            {say.beginATest}
          </button>
        </p>
      </section>
      <CardDesk about={say.butchersTestCardEachCutRoom}>
        {(paper) => <TestCard computed={ready} paper={paper} standing={standing} />}
      </CardDesk>
    </WorksheetFrame>
  );
}

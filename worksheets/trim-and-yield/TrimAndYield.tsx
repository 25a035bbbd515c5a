import { newYieldSlice } from '@larderwright/calc/yield';
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
        <h2 id="tests">Trim tests</h2>
        <p class="say">
          Weigh the piece as bought, trim it as you always do, weigh every pile. Three pieces on three days
          say more than one.
        </p>
        <Tests
          meanwhile={
            <BlankForm
              caption="One cut, three trials"
              columns={['Pile', 'Trial 1, g', 'Trial 2, g', 'Trial 3, g', 'Share, %', 'Worth a kg']}
              rows={8}
            />
          }
        />
        <p class="buttons">
          <button type="button" class="press-first" disabled={waking} onClick={addTest}>
            Begin a test
          </button>
        </p>
      </section>
      <CardDesk about="A butcher’s test card for each cut, with room to sign.">
        {(paper) => <TestCard computed={ready} paper={paper} standing={standing} />}
      </CardDesk>
    </WorksheetFrame>
  );
}

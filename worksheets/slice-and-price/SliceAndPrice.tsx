import { newPlanSlice } from '@larderwright/calc/plan';
import { newSlicingSlice } from '@larderwright/calc/slicing';
import * as say from '#words/slice-and-price/SliceAndPrice.ts';
import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { NotYet } from '../parts/not-yet.tsx';
import { CardDesk } from '../parts/print-card.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { provideSlice } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { $slicing } from './computed.ts';
import { CutFields, PriceFields } from './cut-fields.tsx';
import { SlicingCard } from './slicing-card.tsx';

const CutAnswers = later(() => import('./cut-answers.tsx').then((m) => m.CutAnswers));
const PriceAnswers = later(() => import('./price-answers.tsx').then((m) => m.PriceAnswers));

provideSlice('slicing', newSlicingSlice);
provideSlice('plan', newPlanSlice);

/** Slice, portion, price: how many slices a mould gives, what they weigh, what to ask for them. */
export default function SliceAndPrice({ links, standing }: { links: SiteLinks; standing: string }) {
  const computed = useShared($slicing);
  const ready = computed.state === 'ready' ? computed.value : null;
  return (
    <WorksheetFrame links={links}>
      <section aria-labelledby="the-cut">
        <h2 id="the-cut">{say.howItIsCut}</h2>
        <CutFields />
        <CutAnswers meanwhile={<NotYet what={say.slicesPortionsNotYetComputed} />} />
      </section>
      <section aria-labelledby="the-price">
        <h2 id="the-price">{say.whatToAskForIt}</h2>
        <PriceFields />
        <PriceAnswers meanwhile={<NotYet what={say.pricesNotYetComputed} />} />
      </section>
      <CardDesk about={say.howCutWhatCostsOneCard}>
        {(paper) => <SlicingCard computed={ready} paper={paper} standing={standing} />}
      </CardDesk>
    </WorksheetFrame>
  );
}

import { newCrustSlice } from '@larderwright/calc/mould';
import * as say from '#words/crust/Crust.ts';
import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { NotYet } from '../parts/not-yet.tsx';
import { CardDesk } from '../parts/print-card.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { provideSlice } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { $crust } from './computed.ts';
import { CrustCard } from './crust-card.tsx';
import { LiningFields, PastryFields } from './crust-fields.tsx';
import { WhichMould } from './which-mould.tsx';

provideSlice('crust', newCrustSlice);

const Sheets = later(() => import('./answers.tsx').then((m) => m.Sheets));
const PasteTable = later(() => import('./answers.tsx').then((m) => m.PasteTable));
const LiningAnswers = later(() => import('./answers.tsx').then((m) => m.LiningAnswers));

/** Pastry crust: sheets to cut, the paste for them, chimneys, and what lines the inside. */
export default function Crust({ links, standing }: { links: SiteLinks; standing: string }) {
  const computed = useShared($crust);
  const findings = computed.state === 'ready' ? computed.value.findings : [];
  return (
    <WorksheetFrame links={links}>
      <section aria-labelledby="the-mould">
        <h2 id="the-mould">{say.theMould}</h2>
        <WhichMould findings={findings} />
      </section>
      <section aria-labelledby="pastry">
        <h2 id="pastry">{say.pastry}</h2>
        <PastryFields findings={findings} />
      </section>
      <section aria-labelledby="to-cut">
        <h2 id="to-cut">{say.toCut}</h2>
        <Sheets meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="paste">
        <h2 id="paste">{say.thePaste}</h2>
        <PasteTable meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="lining">
        <h2 id="lining">{say.slicesOrCaulInside}</h2>
        <LiningFields findings={findings} />
        <LiningAnswers meanwhile={<NotYet />} />
      </section>
      <CardDesk about={say.cardPastryBenchSheetsPaste}>
        {(paper) => <CrustCard paper={paper} standing={standing} />}
      </CardDesk>
    </WorksheetFrame>
  );
}

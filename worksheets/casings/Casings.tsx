import { newCasingsSlice } from '@larderwright/calc/casings';
import * as say from '#words/casings/Casings.ts';
import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { NotYet } from '../parts/not-yet.tsx';
import { CardDesk } from '../parts/print-card.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { provideSlice } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { CasingFields, LinkFields } from './casing-fields.tsx';
import { $casings } from './computed.ts';
import { LinkCard } from './link-card.tsx';
import { WeighedLinks } from './weighed-links.tsx';

provideSlice('casings', newCasingsSlice);

const Lengths = later(() => import('./answers.tsx').then((m) => m.Lengths));
const LinkAnswers = later(() => import('./answers.tsx').then((m) => m.LinkAnswers));
const Weighed = later(() => import('./answers.tsx').then((m) => m.Weighed));

/** Casings and links: metres to soak, links to twist, and ten of them on the scale. */
export default function Casings({ links, standing }: { links: SiteLinks; standing: string }) {
  const computed = useShared($casings);
  const findings = computed.state === 'ready' ? computed.value.findings : [];
  return (
    <WorksheetFrame links={links}>
      <section aria-labelledby="casing">
        <h2 id="casing">{say.theCasingAndWhatGoesIn}</h2>
        <CasingFields findings={findings} />
      </section>
      <section aria-labelledby="to-soak">
        <h2 id="to-soak">{say.toSoak}</h2>
        <Lengths meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="links">
        <h2 id="links">{say.links}</h2>
        <LinkFields findings={findings} />
        <LinkAnswers meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="on-the-scale">
        <h2 id="on-the-scale">{say.tenOnTheScale}</h2>
        <WeighedLinks findings={findings} />
        <Weighed meanwhile={<NotYet />} />
      </section>
      <CardDesk about={say.cardFillerSoakListLinkWanted}>
        {(paper) => <LinkCard paper={paper} standing={standing} />}
      </CardDesk>
    </WorksheetFrame>
  );
}

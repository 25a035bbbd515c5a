import { newBinderSlice } from '@larderwright/calc/binder';
import * as say from '#words/binder-and-garnish/BinderAndGarnish.ts';
import { BlankForm } from '../parts/blank-form.tsx';
import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { NotYet } from '../parts/not-yet.tsx';
import { CardDesk } from '../parts/print-card.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { provideSlice } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { AddExtender, AddGarnish } from './add-rows.tsx';
import { $binder } from './computed.ts';
import { EggFields, MeatFields, NamedSausage, PanadeFields } from './fields.tsx';
import { PrepCard } from './prep-card.tsx';

provideSlice('binder', newBinderSlice);

const PanadeParts = later(() => import('./panade-parts.tsx').then((m) => m.PanadeParts));
const ExtenderList = later(() => import('./extenders.tsx').then((m) => m.ExtenderList));
const GarnishList = later(() => import('./garnish-list.tsx').then((m) => m.GarnishList));
const Together = later(() => import('./together.tsx').then((m) => m.Together));

/** Binder, panade and garnish: weights raw and cooked, shares, pieces in a slice, and what they bring. */
export default function BinderAndGarnish({ links, standing }: { links: SiteLinks; standing: string }) {
  const computed = useShared($binder);
  const ready = computed.state === 'ready' ? computed.value : null;
  const findings = ready?.findings ?? [];
  return (
    <WorksheetFrame links={links}>
      <section aria-labelledby="meat-and-slice">
        <h2 id="meat-and-slice">{say.meatMouldAndSlice}</h2>
        <MeatFields findings={findings} />
      </section>
      <section aria-labelledby="panade">
        <h2 id="panade">{say.panade}</h2>
        <PanadeFields findings={findings} meatG={ready?.values.meatG ?? null} />
        <PanadeParts
          meanwhile={
            <BlankForm caption={say.partsOfThePanade} columns={[say.part, say.grams, say.lot]} rows={4} />
          }
        />
      </section>
      <section aria-labelledby="egg-and-cream">
        <h2 id="egg-and-cream">{say.eggAndCream}</h2>
        <EggFields findings={findings} />
      </section>
      <section aria-labelledby="extenders">
        <h2 id="extenders">{say.otherBinders}</h2>
        <NamedSausage />
        <ExtenderList meanwhile={<NotYet what={say.noneYet} />} />
        <AddExtender />
      </section>
      <section aria-labelledby="garnish">
        <h2 id="garnish">{say.garnish}</h2>
        <GarnishList
          meanwhile={
            <BlankForm
              caption={say.garnish}
              columns={[say.garnish, say.asBoughtG, say.leftAfterPreparing, say.readyG, say.pieceMm]}
              rows={5}
            />
          }
        />
        <AddGarnish />
      </section>
      <section aria-labelledby="they-bring">
        <h2 id="they-bring">{say.whatTheyBring}</h2>
        <Together meanwhile={<NotYet />} />
      </section>
      <CardDesk about={say.listPreparingWhatWeighHowSmall}>
        {(paper) => <PrepCard computed={ready} paper={paper} standing={standing} />}
      </CardDesk>
    </WorksheetFrame>
  );
}

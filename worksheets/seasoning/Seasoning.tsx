import { newSeasoningSlice } from '@larderwright/calc/seasoning';
import * as say from '#words/seasoning/Seasoning.ts';
import { BlankForm } from '../parts/blank-form.tsx';
import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { NotYet } from '../parts/not-yet.tsx';
import { CardDesk } from '../parts/print-card.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { provideSlice } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { AddBlend, AddLoose } from './add-rows.tsx';
import { $seasoning } from './computed.ts';
import { JarCard } from './jar-card.tsx';
import { SharedFields } from './shared-fields.tsx';

provideSlice('seasoning', newSeasoningSlice);

const Blends = later(() => import('./blends.tsx').then((m) => m.Blends));
const LooseList = later(() => import('./loose.tsx').then((m) => m.LooseList));
const Together = later(() => import('./together.tsx').then((m) => m.Together));

/** Seasoning by parts: grams of every spice, each against its ceiling, and a label for the jar. */
export default function Seasoning({ links, standing }: { links: SiteLinks; standing: string }) {
  const computed = useShared($seasoning);
  const ready = computed.state === 'ready' ? computed.value : null;
  return (
    <WorksheetFrame links={links}>
      <section aria-labelledby="mix-and-scale">
        <h2 id="mix-and-scale">{say.theMixAndTheScale}</h2>
        <SharedFields findings={ready?.findings ?? []} />
      </section>
      <section aria-labelledby="blends">
        <h2 id="blends">{say.blendsByParts}</h2>
        <Blends
          meanwhile={
            <BlankForm
              caption={say.aBlend}
              columns={[say.spice, say.form, say.parts, say.gKgOfTheMix, say.grams, say.onTheScale]}
              rows={8}
            />
          }
        />
        <AddBlend />
      </section>
      <section aria-labelledby="loose">
        <h2 id="loose">{say.seasoningsByThemselves}</h2>
        <LooseList meanwhile={<NotYet what={say.noneYet} />} />
        <AddLoose />
      </section>
      <section aria-labelledby="all-seasoning">
        <h2 id="all-seasoning">{say.allSeasoningTogether}</h2>
        <Together meanwhile={<NotYet />} />
      </section>
      <CardDesk about={say.labelJarPartsDoseAllergens}>
        {(paper) => <JarCard computed={ready} paper={paper} standing={standing} />}
      </CardDesk>
    </WorksheetFrame>
  );
}

import { newBlendSlice } from '@larderwright/calc/blend';
import * as say from '#words/lean-and-fat/LeanAndFat.ts';
import { BlankForm } from '../parts/blank-form.tsx';
import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { NotYet } from '../parts/not-yet.tsx';
import { CardDesk } from '../parts/print-card.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { provideSlice } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { AddMaterial } from './add-material.tsx';
import { AimFields, BandFields } from './aim-fields.tsx';
import { BlendCard } from './blend-card.tsx';
import { $blend } from './computed.ts';

const Materials = later(() => import('./materials.tsx').then((m) => m.Materials));
const SoldUnder = later(() => import('./sold-under.tsx').then((m) => m.SoldUnder));
const SquareAnswers = later(() => import('./square-answers.tsx').then((m) => m.SquareAnswers));
const LeastCostAnswers = later(() => import('./least-cost.tsx').then((m) => m.LeastCostAnswers));

provideSlice('blend', newBlendSlice);

/** Lean and fat: two materials to one fat content, or the cheapest blend of all that is on hand. */
export default function LeanAndFat({ links, standing }: { links: SiteLinks; standing: string }) {
  const computed = useShared($blend);
  const ready = computed.state === 'ready' ? computed.value : null;
  return (
    <WorksheetFrame links={links}>
      <section aria-labelledby="materials">
        <h2 id="materials">{say.whatThereIs}</h2>
        <Materials
          meanwhile={
            <BlankForm
              caption={say.materialsOnHand}
              columns={[say.material, say.fat, say.protein, say.water, say.priceAKg, say.stockKg]}
              rows={8}
            />
          }
        />
        <AddMaterial />
      </section>
      <section aria-labelledby="sold-under">
        <h2 id="sold-under">{say.theNameItIsSoldUnder}</h2>
        <SoldUnder meanwhile={<NotYet what={say.someNamesHaveStandardFatWater} />} />
      </section>
      <section aria-labelledby="square">
        <h2 id="square">{say.twoMaterialsToOneFatContent}</h2>
        <AimFields />
        <SquareAnswers meanwhile={<NotYet what={say.theSquareNotYetComputed} />} />
      </section>
      <section aria-labelledby="cheapest">
        <h2 id="cheapest">{say.theCheapestBlendOfAllOf}</h2>
        <BandFields />
        <LeastCostAnswers meanwhile={<NotYet what={say.nothingIsAskedYet} />} />
      </section>
      <CardDesk about={say.balanceOneCardBoxFatTest}>
        {(paper) => <BlendCard computed={ready} paper={paper} standing={standing} />}
      </CardDesk>
    </WorksheetFrame>
  );
}

import { newLabelSlice } from '@larderwright/calc/label';
import * as say from '#words/label/Label.ts';
import { BlankForm } from '../parts/blank-form.tsx';
import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { NotYet } from '../parts/not-yet.tsx';
import { CardDesk } from '../parts/print-card.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { provideSlice } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { AddExtra } from './add-extra.tsx';
import { $label } from './computed.ts';
import { FoodFields, MassFields } from './food-fields.tsx';
import { LabelCard } from './label-card.tsx';

provideSlice('label', newLabelSlice);

const LineSlips = later(() => import('./line-slips.tsx').then((m) => m.LineSlips));
const Extras = later(() => import('./extras.tsx').then((m) => m.Extras));
const ListAnswers = later(() => import('./list-answers.tsx').then((m) => m.ListAnswers));
const NutritionTables = later(() => import('./nutrition.tsx').then((m) => m.NutritionTables));
const Keeping = later(() => import('./keeping.tsx').then((m) => m.Keeping));
const Warnings = later(() => import('./warnings.tsx').then((m) => m.Warnings));

/** A label from the formula: list, quantities, allergens, nutrition, warnings and date. */
export default function Label({ links, standing }: { links: SiteLinks; standing: string }) {
  const computed = useShared($label);
  const ready = computed.state === 'ready' ? computed.value : null;
  const findings = ready?.findings ?? [];
  return (
    <WorksheetFrame links={links}>
      <section aria-labelledby="the-food">
        <h2 id="the-food">{say.theFood}</h2>
        <FoodFields findings={findings} />
      </section>
      <section aria-labelledby="what-went-in">
        <h2 id="what-went-in">{say.whatWentIn}</h2>
        <MassFields findings={findings} />
        <LineSlips
          meanwhile={
            <BlankForm
              caption={say.ingredients}
              columns={[say.ingredient, 'g', say.nameInTheList, say.madeOf, say.allergens]}
              rows={8}
            />
          }
        />
        <h3>{say.notInTheFormulaCrustJelly}</h3>
        <Extras meanwhile={null} />
        <AddExtra />
      </section>
      <section aria-labelledby="the-list">
        <h2 id="the-list">{say.ingredientList}</h2>
        <ListAnswers meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="nutrition">
        <h2 id="nutrition">{say.nutrition}</h2>
        <NutritionTables meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="keeping">
        <h2 id="keeping">{say.keepingDateAndWeight}</h2>
        <Keeping meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="warnings">
        <h2 id="warnings">{say.warnings}</h2>
        <Warnings meanwhile={<NotYet />} />
      </section>
      <CardDesk about={say.labelProofListQuantities}>
        {(paper) => <LabelCard computed={ready} paper={paper} standing={standing} />}
      </CardDesk>
    </WorksheetFrame>
  );
}

import * as say from '#words/batch-formula/BatchFormula.ts';
import { BlankForm } from '../parts/blank-form.tsx';
import { at } from '../parts/finding-list.tsx';
import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { NotYet } from '../parts/not-yet.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { TextField } from '../parts/text-field.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { useShared } from '../state/use-shared.ts';
import { AddLine } from './add-line.tsx';
import { $formula } from './computed.ts';
import { FamilyField } from './family-field.tsx';
import { fetchLines } from './fetch-lines.ts';

const Lines = later(() => fetchLines().then((m) => m.Lines));
const FamilyRanges = later(() => import('./family-ranges.tsx').then((m) => m.FamilyRanges));
const FamilyStart = later(() => import('./family-start.tsx').then((m) => m.FamilyStart));
const Composition = later(() => import('./composition.tsx').then((m) => m.Composition));
const SaltFigures = later(() => import('./salt-section.tsx').then((m) => m.SaltFigures));
const Scaling = later(() => import('./scaling.tsx').then((m) => m.Scaling));

/** Batch formula: what goes in, what it makes, what the scale showed. */
export default function BatchFormula({ links }: { links: SiteLinks }) {
  return (
    <WorksheetFrame links={links}>
      <section aria-labelledby="the-batch">
        <h2 id="the-batch">{say.theBatch}</h2>
        <div class="fields fields-first-wide">
          <TextField path="product.name" label={say.product} />
          <TextField path="product.batchNo" label={say.batchNumber} />
          <TextField path="product.kitchen" label={say.kitchen} />
        </div>
        <FamilyField />
        <FamilyStart />
        <FamilyRanges />
      </section>
      <section aria-labelledby="what-goes-in">
        <h2 id="what-goes-in">{say.whatGoesIn}</h2>
        <Lines
          meanwhile={
            <BlankForm
              caption={say.linesOfTheFormula}
              columns={[say.ingredient, say.part, say.plannedG, say.asWeighedG, say.lot]}
              rows={14}
            />
          }
        />
        <AddLine />
      </section>
      <section aria-labelledby="what-it-makes">
        <h2 id="what-it-makes">{say.whatItMakes}</h2>
        <Composition meanwhile={<NotYet what={say.weightCompositionNotYet} />} />
      </section>
      <section aria-labelledby="salt">
        <h2 id="salt">{say.saltFromEverySource}</h2>
        <SaltTarget />
        <SaltFigures meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="another-size">
        <h2 id="another-size">{say.anotherSize}</h2>
        <Scaling meanwhile={<NotYet what={say.thereIsNothingToScaleYet} />} />
      </section>
    </WorksheetFrame>
  );
}

function SaltTarget() {
  const computed = useShared($formula);
  const path = 'formula.saltTarget';
  return (
    <div class="fields">
      <NumberField
        path={path}
        label={say.saltWantedEverythingBowl}
        kind="fraction"
        range={{ min: 0, max: 0.2 }}
        hint={say.allSourcesTogetherCuringSalt}
        findings={computed.state === 'ready' ? at(computed.value.findings, path) : []}
      />
    </div>
  );
}

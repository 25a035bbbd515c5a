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
        <h2 id="the-batch">The batch</h2>
        <div class="fields fields-first-wide">
          <TextField path="product.name" label="Product" />
          <TextField path="product.batchNo" label="Batch number" />
          <TextField path="product.kitchen" label="Kitchen" />
        </div>
        <FamilyField />
        <FamilyStart />
        <FamilyRanges />
      </section>
      <section aria-labelledby="what-goes-in">
        <h2 id="what-goes-in">What goes in</h2>
        <Lines
          meanwhile={
            <BlankForm
              caption="Lines of the formula"
              columns={['Ingredient', 'Part', 'Planned g', 'As weighed g', 'Lot']}
              rows={14}
            />
          }
        />
        <AddLine />
      </section>
      <section aria-labelledby="what-it-makes">
        <h2 id="what-it-makes">What it makes</h2>
        <Composition meanwhile={<NotYet what="Weight and composition: not yet computed" />} />
      </section>
      <section aria-labelledby="salt">
        <h2 id="salt">Salt from every source</h2>
        <SaltTarget />
        <SaltFigures meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="another-size">
        <h2 id="another-size">Another size</h2>
        <Scaling meanwhile={<NotYet what="There is nothing to scale yet" />} />
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
        label="Salt wanted, of everything in the bowl"
        kind="fraction"
        range={{ min: 0, max: 0.2 }}
        hint="From all sources together, curing salt and bacon included. A lining counts in the slice, not here."
        findings={computed.state === 'ready' ? at(computed.value.findings, path) : []}
      />
    </div>
  );
}

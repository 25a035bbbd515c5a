import { BlankForm } from '../parts/blank-form.tsx';
import { at } from '../parts/finding-list.tsx';
import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { NotYet } from '../parts/not-yet.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { useShared } from '../state/use-shared.ts';
import { AddMould } from './add-mould.tsx';
import { $mould } from './computed.ts';

const MouldList = later(() => import('./mould-list.tsx').then((m) => m.MouldList));
const BatchWeight = later(() => import('./together.tsx').then((m) => m.BatchWeight));
const Together = later(() => import('./together.tsx').then((m) => m.Together));

/** No mix of a kitchen is lighter or heavier than this, g/mL. */
const DENSITY = { min: 0.3, max: 2 };

/** Mould and fill: what each mould takes, how many the batch fills, what was filled. */
export default function MouldAndFill({ links }: { links: SiteLinks }) {
  return (
    <WorksheetFrame links={links}>
      <section aria-labelledby="the-mix">
        <h2 id="the-mix">The mix</h2>
        <DensityField />
        <BatchWeight meanwhile={<NotYet what="Weight of the batch: not yet computed" />} />
      </section>
      <section aria-labelledby="the-moulds">
        <h2 id="the-moulds">The moulds</h2>
        <MouldList
          meanwhile={
            <BlankForm
              caption="Moulds"
              columns={[
                'Mould',
                'Inside, mm',
                'Water to the rim, mL',
                'Headspace, mm',
                'How many',
                'Filled, g',
              ]}
              rows={5}
            />
          }
        />
        <AddMould />
      </section>
      <section aria-labelledby="all-moulds">
        <h2 id="all-moulds">All moulds together</h2>
        <Together meanwhile={<NotYet />} />
      </section>
    </WorksheetFrame>
  );
}

function DensityField() {
  const computed = useShared($mould);
  const path = 'mould.density';
  return (
    <div class="fields">
      <NumberField
        path={path}
        label="Density of the raw mix"
        kind="density"
        range={DENSITY}
        hint="Weigh a full cup of known volume. Tamped coarse mixes 1.00 to 1.04, whipped ones 0.75 to 0.90: common practice, no source."
        findings={computed.state === 'ready' ? at(computed.value.findings, path) : []}
      />
    </div>
  );
}

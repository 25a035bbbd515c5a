import * as say from '#words/mould-and-fill/MouldAndFill.ts';
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
        <h2 id="the-mix">{say.theMix}</h2>
        <DensityField />
        <BatchWeight meanwhile={<NotYet what={say.weightOfTheBatchNotYet} />} />
      </section>
      <section aria-labelledby="the-moulds">
        <h2 id="the-moulds">{say.theMoulds}</h2>
        <MouldList
          meanwhile={
            <BlankForm
              caption={say.moulds}
              columns={[
                say.mould,
                say.insideMm,
                say.waterToTheRimMl,
                say.headspaceMm,
                say.howMany,
                say.filledG,
              ]}
              rows={5}
            />
          }
        />
        <AddMould />
      </section>
      <section aria-labelledby="all-moulds">
        <h2 id="all-moulds">{say.allMouldsTogether}</h2>
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
        label={say.densityOfTheRawMix}
        kind="density"
        range={DENSITY}
        hint={say.weighFullCupKnownVolumeTamped}
        findings={computed.state === 'ready' ? at(computed.value.findings, path) : []}
      />
    </div>
  );
}

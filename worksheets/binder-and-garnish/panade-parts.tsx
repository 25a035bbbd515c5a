import { type BinderPart, newBinderPart, type PanadeKind, withPanade } from '@larderwright/calc/binder';
import { Fragment } from 'preact';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { RemovedRowLine } from '../parts/row-tools.tsx';
import { newId } from '../state/clock.ts';
import { addRow } from '../state/rows.ts';
import { edit } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { binderWorkings } from '../words/binder.ts';
import { $binder } from './computed.ts';
import { rawForShare } from './fields.tsx';
import { PartRow } from './part-row.tsx';

const LIST = 'binder.panadeParts';

/** The parts of the panade, and what becomes of them. */
export function PanadeParts() {
  const kind = useAt('binder.panadeKind') as PanadeKind;
  const parts = useAt(LIST) as readonly BinderPart[];
  const computed = useShared($binder);
  if (kind === 'none')
    return <p class="say">No panade. Lean, seared or wet mixes are the ones that want one.</p>;
  return (
    <>
      <ol class="ledger">
        {parts.map((part, place) => (
          <Fragment key={part.id}>
            <RemovedRowLine list={LIST} place={place} as="li" />
            <PartRow
              list={LIST}
              row={part}
              place={place}
              last={place === parts.length - 1}
              fallback="Panade part"
            />
          </Fragment>
        ))}
        <RemovedRowLine list={LIST} place={parts.length} as="li" />
      </ol>
      <p class="buttons">
        <button type="button" onClick={() => addRow(LIST, newBinderPart(newId()))}>
          Add a part
        </button>
        <Computed of={computed}>{({ values }) => <FillIn meatG={values.meatG} />}</Computed>
      </p>
      <Computed of={computed}>
        {({ values: { panade } }) => (
          <div class="answers">
            <Answer
              label="Panade, cooked and cold"
              value={panade.cookedG === null ? null : gramsText(panade.cookedG)}
              missing="Cannot tell: a part or the loss is missing"
              worked={<p>{binderWorkings.cooked} Derived.</p>}
            />
            <Answer
              label="Panade of the meat"
              value={panade.shareFraction === null ? null : percentText(panade.shareFraction, 1)}
              missing="Cannot tell: the panade or the meat is not known"
              worked={<p>{binderWorkings.share} Derived.</p>}
            />
            <Answer
              label="For the share wanted"
              value={
                panade.wantedCookedG === null || panade.wantedRawG === null
                  ? null
                  : `${gramsText(panade.wantedRawG)} raw, ${gramsText(panade.wantedCookedG)} cooked`
              }
              worked={<p>{binderWorkings.wanted} Derived.</p>}
            />
          </div>
        )}
      </Computed>
    </>
  );
}

/** Puts in the usual parts anew, for the meat as it now weighs. */
function FillIn({ meatG }: { meatG: number | null }) {
  const fill = () =>
    edit((batch) => {
      const { binder } = batch;
      if (!binder) return batch;
      const { panadeKind } = binder;
      return { ...batch, binder: withPanade(binder, panadeKind, rawForShare(binder, panadeKind, meatG)) };
    });
  return (
    <button type="button" disabled={meatG === null} onClick={fill}>
      Put in the usual parts for the share wanted
    </button>
  );
}

import { type BinderPart, newBinderPart, type PanadeKind, withPanade } from '@larderwright/calc/binder';
import { Fragment } from 'preact';
import * as say from '#words/binder-and-garnish/panade-parts.ts';
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
  if (kind === 'none') return <p class="say">{say.noPanadeLeanSearedWetMixes}</p>;
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
              fallback={say.panadePart}
            />
          </Fragment>
        ))}
        <RemovedRowLine list={LIST} place={parts.length} as="li" />
      </ol>
      <p class="buttons">
        <button type="button" onClick={() => addRow(LIST, newBinderPart(newId()))}>
          {say.addAPart}
        </button>
        <Computed of={computed}>{({ values }) => <FillIn meatG={values.meatG} />}</Computed>
      </p>
      <Computed of={computed}>
        {({ values: { panade } }) => (
          <div class="answers">
            <Answer
              label={say.panadeCookedAndCold}
              value={panade.cookedG === null ? null : gramsText(panade.cookedG)}
              missing={say.cannotTellPartLossMissing}
              worked={<p>{say.derived(binderWorkings.cooked)}</p>}
            />
            <Answer
              label={say.panadeOfTheMeat}
              value={panade.shareFraction === null ? null : percentText(panade.shareFraction, 1)}
              missing={say.cannotTellPanadeMeatNotKnown}
              worked={<p>{say.derived2(binderWorkings.share)}</p>}
            />
            <Answer
              label={say.forTheShareWanted}
              value={
                panade.wantedCookedG === null || panade.wantedRawG === null
                  ? null
                  : say.rawCooked(gramsText(panade.wantedRawG), gramsText(panade.wantedCookedG))
              }
              worked={<p>{say.derived3(binderWorkings.wanted)}</p>}
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
      {say.putUsualPartsShareWanted}
    </button>
  );
}

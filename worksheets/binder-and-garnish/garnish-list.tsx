import type { GarnishLine, GarnishValues } from '@larderwright/calc/binder';
import type { Finding } from '@larderwright/calc/findings';
import { fixedText, rangeIn } from '@larderwright/calc/quantities';
import { Fragment } from 'preact';
import * as say from '#words/binder-and-garnish/garnish-list.ts';
import { Answer } from '../parts/answer.tsx';
import { ChoiceField } from '../parts/choice-field.tsx';
import { FindingList, within } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { RemovedRowLine, RowTools } from '../parts/row-tools.tsx';
import { editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { binderWorkings } from '../words/binder.ts';
import { PIECE_SHAPE_NAMES } from '../words/binder-names.ts';
import { $binder } from './computed.ts';
import { IngredientBox } from './ingredient-box.tsx';
import { PackFields } from './pack-fields.tsx';

const LIST = 'binder.garnish';
const SHAPES = Object.entries(PIECE_SHAPE_NAMES).map(([value, label]) => ({ value, label }));
const YES_NO = [
  { value: 'no', label: say.no },
  { value: 'yes', label: say.yes },
];

/** Everything folded in or laid in. */
export function GarnishList() {
  const rows = useAt(LIST) as readonly GarnishLine[];
  const computed = useShared($binder);
  const ready = computed.state === 'ready' ? computed.value : null;
  return (
    <>
      {rows.map((row, place) => (
        <Fragment key={row.id}>
          <RemovedRowLine list={LIST} place={place} />
          <GarnishSection
            row={row}
            place={place}
            last={place === rows.length - 1}
            values={ready?.values.garnish.find(({ lineId }) => lineId === row.id) ?? null}
            findings={ready?.findings ?? []}
          />
        </Fragment>
      ))}
      <RemovedRowLine list={LIST} place={rows.length} />
    </>
  );
}

interface GarnishSectionProps {
  row: GarnishLine;
  place: number;
  last: boolean;
  values: GarnishValues | null;
  findings: readonly Finding[];
}

function GarnishSection({ row, place, last, values, findings }: GarnishSectionProps) {
  const path = `${LIST}.${row.id}`;
  const name = row.name || say.garnish(place + 1);
  const flag = (key: 'dried' | 'rawAllium', label: string) => (
    <ChoiceField
      label={label}
      value={row[key] ? 'yes' : 'no'}
      choices={YES_NO}
      onChoose={(value) => editAt(`${path}.${key}`, value === 'yes')}
    />
  );
  return (
    <section class="mould" aria-label={name}>
      <div class="mould-head">
        <h3>{name}</h3>
        <RowTools list={LIST} id={row.id} label={name} first={place === 0} last={last} />
      </div>
      <div class="fields">
        <IngredientBox path={path} row={row} label={say.whatGarnishIs(place + 1)} />
        <NumberField
          path={`${path}.asBought`}
          label={say.asBought(name)}
          kind="mass"
          units={['g', 'kg', 'oz']}
        />
        <NumberField
          path={`${path}.prepYield`}
          label={say.leftAfterPreparing(name)}
          kind="fraction"
          range={{ min: 0, max: 3 }}
          hint={say.peeledBonedCookedDriedOver100}
        />
        <NumberField
          path={`${path}.prepared`}
          label={say.readyToFoldInWeighed(name)}
          kind="mass"
          units={['g', 'kg', 'oz']}
          hint={say.outranksTheReckoning}
        />
        <ChoiceField
          label={say.shape(name)}
          value={row.shape}
          choices={SHAPES}
          onChoose={(shape) => editAt(`${path}.shape`, shape)}
        />
        <NumberField
          path={`${path}.pieceSize`}
          label={say.sizeOfAPiece(name)}
          kind="length"
          units={['mm', 'cm', 'in']}
          range={rangeIn('mm', 0, 300)}
          hint={say.edgeDiameterThicknessStrip}
        />
        {flag('dried', say.pressedOrBakedDry(name))}
        {flag('rawAllium', say.rawOnionShallotGarlicOrLeek(name))}
      </div>
      <details class="pack">
        <summary>{say.laidStripsDensityFiguresOff}</summary>
        <div class="fields">
          <NumberField
            path={`${path}.laidCount`}
            label={say.stripsLaidAlong(name)}
            kind="count"
            hint={say.seenInEverySliceBlankScattered}
          />
          <NumberField
            path={`${path}.density`}
            label={say.densityOf(name)}
            kind="density"
            range={{ min: 0.1, max: 3 }}
          />
          <PackFields path={path} name={name} />
        </div>
      </details>
      <FindingList findings={within(findings, path)} />
      <div class="answers">
        <Answer
          label={say.intoTheBowl(name)}
          value={values?.preparedG == null ? null : gramsText(values.preparedG)}
          missing={say.cannotTellWeighGiveWhatBought}
          worked={<p>{say.derived(binderWorkings.prepared)}</p>}
        >
          {values?.shareFraction == null ? null : (
            <p>{say.ofTheWholeMix(percentText(values.shareFraction, 1))}</p>
          )}
          {values?.toBuyG == null ? null : <p>{say.toBuy(gramsText(values.toBuyG))}</p>}
        </Answer>
        <Answer
          label={say.piecesInASliceOnAverage(name)}
          value={values?.pieces ? fixedText(values.pieces.within, 1) : null}
          missing={say.cannotTellPieceSliceMould}
          worked={<p>{say.derived2(binderWorkings.pieces)}</p>}
        >
          {values?.pieces ? (
            <p>{say.seenOnOneFace(fixedText(values.pieces.onFace, 1), binderWorkings.onFace)}</p>
          ) : null}
        </Answer>
      </div>
    </section>
  );
}

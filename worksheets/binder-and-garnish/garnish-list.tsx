import type { GarnishLine, GarnishValues } from '@larderwright/calc/binder';
import type { Finding } from '@larderwright/calc/findings';
import { fixedText, rangeIn } from '@larderwright/calc/quantities';
import { Fragment } from 'preact';
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
  { value: 'no', label: 'No' },
  { value: 'yes', label: 'Yes' },
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
  const name = row.name || `Garnish ${place + 1}`;
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
        <IngredientBox path={path} row={row} label={`What garnish ${place + 1} is`} />
        <NumberField
          path={`${path}.asBought`}
          label={`${name}, as bought`}
          kind="mass"
          units={['g', 'kg', 'oz']}
        />
        <NumberField
          path={`${path}.prepYield`}
          label={`Left after preparing, ${name}`}
          kind="fraction"
          range={{ min: 0, max: 3 }}
          hint="Peeled, boned, cooked, dried. Over 100 % for what soaks up water."
        />
        <NumberField
          path={`${path}.prepared`}
          label={`${name}, ready to fold in, weighed`}
          kind="mass"
          units={['g', 'kg', 'oz']}
          hint="Outranks the reckoning."
        />
        <ChoiceField
          label={`Shape, ${name}`}
          value={row.shape}
          choices={SHAPES}
          onChoose={(shape) => editAt(`${path}.shape`, shape)}
        />
        <NumberField
          path={`${path}.pieceSize`}
          label={`Size of a piece, ${name}`}
          kind="length"
          units={['mm', 'cm', 'in']}
          range={rangeIn('mm', 0, 300)}
          hint="Edge, diameter, or thickness of a strip."
        />
        {flag('dried', `Pressed or baked dry, ${name}`)}
        {flag('rawAllium', `Raw onion, shallot, garlic or leek, ${name}`)}
      </div>
      <details class="pack">
        <summary>Laid in strips, density, figures off the pack</summary>
        <div class="fields">
          <NumberField
            path={`${path}.laidCount`}
            label={`Strips laid along, ${name}`}
            kind="count"
            hint="Seen in every slice. Blank: scattered."
          />
          <NumberField
            path={`${path}.density`}
            label={`Density of ${name}`}
            kind="density"
            range={{ min: 0.1, max: 3 }}
          />
          <PackFields path={path} name={name} />
        </div>
      </details>
      <FindingList findings={within(findings, path)} />
      <div class="answers">
        <Answer
          label={`${name} into the bowl`}
          value={values?.preparedG == null ? null : gramsText(values.preparedG)}
          missing="Cannot tell: weigh it, or give what is bought and what is left"
          worked={<p>{binderWorkings.prepared} Derived.</p>}
        >
          {values?.shareFraction == null ? null : (
            <p>{percentText(values.shareFraction, 1)} of the whole mix.</p>
          )}
          {values?.toBuyG == null ? null : <p>To buy: {gramsText(values.toBuyG)}.</p>}
        </Answer>
        <Answer
          label={`${name}: pieces in a slice, on average`}
          value={values?.pieces ? fixedText(values.pieces.within, 1) : null}
          missing="Cannot tell: piece, slice, mould, density or the formula is missing"
          worked={<p>{binderWorkings.pieces} Derived.</p>}
        >
          {values?.pieces ? (
            <p>
              Seen on one face: {fixedText(values.pieces.onFace, 1)}. {binderWorkings.onFace}
            </p>
          ) : null}
        </Answer>
      </div>
    </section>
  );
}

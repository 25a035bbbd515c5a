import { type LabelExtra, newLabelExtra } from '@larderwright/calc/label';
import { Fragment } from 'preact';
import * as say from '#words/label/extras.ts';
import { at, FindingList } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { RemovedRowLine, RowTools } from '../parts/row-tools.tsx';
import { TextField } from '../parts/text-field.tsx';
import { newId } from '../state/clock.ts';
import { addRow } from '../state/rows.ts';
import { editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { AllergenTicks } from './allergen-ticks.tsx';
import { CarriedFood } from './carried-food.tsx';
import { $label } from './computed.ts';
import { FigureBoxes } from './figure-boxes.tsx';

const LIST = 'label.extras';
const MAIN = [
  ['fat', say.fat],
  ['protein', say.protein],
  ['salt', say.salt],
] as const;

/** Begins one. */
export function addExtra(): void {
  addRow(LIST, newLabelExtra(newId()));
}

/** Crust, jelly, a seal: what is in the food and not in the formula. */
export function Extras() {
  const all = useAt(LIST) as readonly LabelExtra[];
  const computed = useShared($label);
  const ready = computed.state === 'ready' ? computed.value : null;
  const findings = ready?.findings ?? [];
  const carried = ready?.values.parts.filter((part) => part.carried !== null) ?? [];
  const extras = all.filter(({ id }) => carried.every((part) => part.id !== id));
  return (
    <>
      {carried.map((part) => (
        <CarriedFood key={part.id} part={part} findings={findings} />
      ))}
      {extras.map((extra, place) => {
        const path = `${LIST}.${extra.id}`;
        const name = extra.name || say.addition(place + 1);
        return (
          <Fragment key={extra.id}>
            <RemovedRowLine list={LIST} place={place} />
            <section class="mould" aria-label={name}>
              <div class="mould-head">
                <h3>{name}</h3>
                <RowTools
                  list={LIST}
                  id={extra.id}
                  label={name}
                  first={place === 0}
                  last={place === extras.length - 1}
                />
              </div>
              <div class="fields">
                <TextField path={`${path}.name`} label={say.nameInTheList} />
                <NumberField
                  path={`${path}.mass`}
                  label={say.weightInTheFood}
                  kind="mass"
                  units={['g', 'kg', 'lb']}
                />
                <TextField path={`${path}.madeOf`} label={say.madeOf} hint={say.mostFirstAsItWentIn} />
              </div>
              <FindingList findings={at(findings, path)} />
              <AllergenTicks
                name={name}
                ticked={extra.allergens}
                onTick={(allergens) => editAt(`${path}.allergens`, allergens)}
                unread={say.nobodyHasSaid}
              />
              <details class="label-more">
                <summary>{say.nutritionOf(name)}</summary>
                <div class="fields">
                  {MAIN.map(([key, label]) => (
                    <NumberField
                      key={key}
                      path={`${path}.figures.${key}`}
                      label={say.ofWord(label, name)}
                      kind="fraction"
                      units={['%']}
                    />
                  ))}
                </div>
                <FigureBoxes
                  name={name}
                  figures={extra.figures}
                  onFigures={(figures) => editAt(`${path}.figures`, figures)}
                />
              </details>
            </section>
          </Fragment>
        );
      })}
      <RemovedRowLine list={LIST} place={extras.length} />
    </>
  );
}

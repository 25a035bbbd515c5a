import { newStay, newStorageSlice, type StorageStay } from '@larderwright/calc/growth';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/press-and-chill/storage.ts';
import { Answer } from '../parts/answer.tsx';
import { ChoiceField } from '../parts/choice-field.tsx';
import { Computed } from '../parts/computed.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { RemovedRowLine } from '../parts/row-tools.tsx';
import { newId } from '../state/clock.ts';
import { addRow, removeRow } from '../state/rows.ts';
import { $batch, edit, editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import {
  GROWTH_DOUBT_WORDS,
  growthWorkings,
  LISTERIA_DOUBT_WORDS,
  LISTERIA_GROUP_NAMES,
  logsText,
  withAndWithoutLag,
} from '../words/growth.ts';
import { BeginByProduct, ByProductAnswer, ByProductFields } from './by-product.tsx';
import { $chill } from './computed.ts';

const LIST = 'storage.stays';

/** Where the finished product is kept. Begun when a person wants it. */
export function Storage() {
  const begun = useShared($batch).storage !== undefined;
  if (!begun)
    return (
      <p class="buttons">
        <button type="button" onClick={() => edit((batch) => ({ ...batch, storage: newStorageSlice() }))}>
          {say.reckonGrowthInStorage}
        </button>
      </p>
    );
  return <Stays />;
}

function Stays() {
  const stays = useAt(LIST) as readonly StorageStay[];
  const group = useAt('storage.listeriaGroupId');
  const measured = useShared($batch).storage?.measured !== undefined;
  return (
    <>
      <div class="fields">
        <ChoiceField
          label={say.kindOfFoodForListeria}
          value={typeof group === 'string' ? group : ''}
          empty={say.notChosenNothingIsReckoned}
          choices={LISTERIA_GROUP_NAMES}
          onChoose={(id) => editAt('storage.listeriaGroupId', id === '' ? null : id)}
        />
      </div>
      {stays.map((stay, place) => (
        <fieldset key={stay.id} class="probe">
          <legend>{say.stay2(place + 1)}</legend>
          <div class="fields">
            <NumberField
              path={`${LIST}.${stay.id}.temp`}
              label={say.keptAt}
              kind="temperature"
              units={['C', 'F']}
            />
            <NumberField
              path={`${LIST}.${stay.id}.time`}
              label={say.forWord}
              kind="time"
              units={['d', 'h']}
            />
          </div>
          {stays.length > 1 ? (
            <p class="buttons">
              <button type="button" onClick={() => removeRow(LIST, stay.id, say.stay2(place + 1))}>
                {say.removeStay2(place + 1)}
              </button>
            </p>
          ) : null}
        </fieldset>
      ))}
      <RemovedRowLine list={LIST} />
      {measured ? <ByProductFields /> : null}
      <p class="buttons">
        <button type="button" onClick={() => addRow(LIST, newStay(newId()))}>
          {say.addAnotherStay}
        </button>
      </p>
      {measured ? null : <BeginByProduct />}
      <Computed of={useShared($chill)}>
        {({ storage }) =>
          storage === null ? null : (
            <div class="answers">
              <Answer
                label={say.listeriaMonocytogenesTenfolds}
                value={storage.listeria.log10 === null ? null : logsText(storage.listeria.log10)}
                missing={say.cannotTell2(LISTERIA_DOUBT_WORDS[storage.listeria.doubt ?? 'no-stay'])}
                worked={<p>{growthWorkings.listeria}</p>}
              >
                {storage.listeria.daysToHundredfold === null ? null : (
                  <p>
                    {say.warmestHundredfoldTakesDaysLag2(
                      fixedText(storage.listeria.daysToHundredfold, 1, 'down'),
                    )}
                  </p>
                )}
              </Answer>
              {storage.byProduct === null ? null : (
                <ByProductAnswer grown={storage.byProduct} foodCode={storage.byFoodCode} />
              )}
              <Answer
                label={say.clostridiumPerfringensTenfolds2}
                value={
                  storage.perfringens.withoutLag === null || storage.perfringens.withLag === null
                    ? null
                    : withAndWithoutLag(storage.perfringens.withoutLag, storage.perfringens.withLag)
                }
                missing={say.cannotTell2(
                  storage.perfringens.doubt === null || storage.perfringens.doubt === 'no-stay'
                    ? LISTERIA_DOUBT_WORDS['no-stay']
                    : GROWTH_DOUBT_WORDS[storage.perfringens.doubt],
                )}
                worked={<p>{growthWorkings.perfringens}</p>}
              />
            </div>
          )
        }
      </Computed>
    </>
  );
}

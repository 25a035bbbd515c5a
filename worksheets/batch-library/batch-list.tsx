import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import * as say from '#words/batch-library/batch-list.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { FieldFrame } from '../parts/field-frame.tsx';
import type { Shelved } from '../state/database.ts';
import { useShared } from '../state/use-shared.ts';
import { arranged, type Order, type Which } from './arrange.ts';
import { BatchRow } from './batch-row.tsx';
import { $done, undoDone } from './shelf-store.ts';

/** Rows set at once: a screen or two. */
const PAGE = 50;

const ORDERS: readonly { value: Order; label: string }[] = [
  { value: 'changed', label: say.lastChangedFirst },
  { value: 'day', label: say.newestDayFirst },
  { value: 'state', label: say.heldFirstThenByState },
  { value: 'name', label: say.byName },
  { value: 'number', label: say.byNumber },
];
const WHICH: readonly { value: Which; label: string }[] = [
  { value: 'in-use', label: say.inUse },
  { value: 'archived', label: say.archived },
  { value: 'all', label: say.all },
];

/** The list, searched and sorted. */
export function BatchList({ batches, newBatch }: { batches: readonly Shelved[]; newBatch: string }) {
  const [text, setText] = useState('');
  const [order, setOrder] = useState<Order>('changed');
  const [which, setWhich] = useState<Which>('in-use');
  const [most, setMost] = useState(PAGE);
  const shown = useMemo(() => arranged(batches, { text, which, order }), [batches, text, which, order]);
  return (
    <>
      <p class="choices">
        <a class="press press-first" href={newBatch}>
          {say.startANewBatch}
        </a>
      </p>
      {batches.length > 0 ? (
        <search class="fields shelf-finder">
          <FieldFrame id="find-batch" label={say.find} hint={say.nameNumberLotIngredientDay}>
            <input
              id="find-batch"
              class="field-input field-words"
              type="search"
              value={text}
              autocomplete="off"
              spellcheck={false}
              aria-describedby="find-batch-says"
              onInput={({ currentTarget }) => {
                setText(currentTarget.value);
                setMost(PAGE);
              }}
            />
          </FieldFrame>
          <ChoiceField
            label={say.order}
            value={order}
            choices={ORDERS}
            onChoose={(value) => setOrder(value as Order)}
          />
          <ChoiceField
            label={say.show}
            value={which}
            choices={WHICH}
            onChoose={(value) => setWhich(value as Which)}
          />
        </search>
      ) : null}
      <UndoLine />
      <p class="say" role="status">
        {batches.length === 0
          ? say.nothingKeptHereYetFirstThing
          : shown.length === batches.length
            ? say.batchEs(batches.length)
            : say.ofWord(shown.length, batches.length)}
      </p>
      {shown.length > 0 ? (
        <ul class="shelf">
          {shown.slice(0, most).map((batch) => (
            <BatchRow key={batch.id} batch={batch} />
          ))}
        </ul>
      ) : null}
      {shown.length > most ? (
        <p class="buttons">
          <button type="button" onClick={() => setMost(most + PAGE)}>
            {say.showMore(Math.min(PAGE, shown.length - most))}
          </button>
        </p>
      ) : null}
    </>
  );
}

/** What was done last, and the way back. The pressed button went with its row: the focus comes here. */
function UndoLine() {
  const done = useShared($done);
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => button.current?.focus(), [done]);
  return (
    <div class="removed-row" role="status">
      {done ? (
        <>
          <span>
            {done.what === 'deleted' ? say.deleted : done.what === 'archived' ? say.archived : say.backInUse}:{' '}
            <strong>{done.name}</strong>
          </span>
          <button ref={button} type="button" onClick={() => void undoDone()}>
            {say.undo}
          </button>
        </>
      ) : null}
    </div>
  );
}

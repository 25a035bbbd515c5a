import { searchSummaries } from '@larderwright/calc/batch';
import { useMemo, useState } from 'preact/hooks';
import * as say from '#words/compare/picker.ts';
import { FieldFrame } from '../parts/field-frame.tsx';
import type { Shelved } from '../state/database.ts';
import { COMPARE_WORDS } from '../words/compare.ts';
import { MOST_SIDE } from './compare-store.ts';

/** Rows shown at once: the search finds the others. */
const ROWS = 12;

interface PickerProps {
  batches: readonly Shelved[];
  chosen: readonly string[];
  onChoose: (ids: readonly string[]) => void;
}

/** The batches to tick, newest first. What is ticked stays in sight. */
export function Picker({ batches, chosen, onChoose }: PickerProps) {
  const [text, setText] = useState('');
  const found = useMemo(() => searchSummaries(batches, text), [batches, text]);
  const ticked = batches.filter(({ id }) => chosen.includes(id));
  const others = found.filter(({ id }) => !chosen.includes(id));
  const toggle = (id: string) =>
    onChoose(chosen.includes(id) ? chosen.filter((each) => each !== id) : [...chosen, id]);
  if (batches.length === 0) return <p class="say">{COMPARE_WORDS.nothingKept}</p>;
  return (
    <>
      <search class="fields">
        <FieldFrame id="find-compared" label={say.find} hint={say.nameNumberLotIngredientDay}>
          <input
            id="find-compared"
            class="field-input field-words"
            type="search"
            value={text}
            autocomplete="off"
            spellcheck={false}
            aria-describedby="find-compared-says"
            onInput={({ currentTarget }) => setText(currentTarget.value)}
          />
        </FieldFrame>
      </search>
      <p class="say" role="status">
        {say.chosen(chosen.length, COMPARE_WORDS.mostSide(MOST_SIDE))}{' '}
        {others.length > ROWS ? say.ofOthersShown(ROWS, others.length) : null}
      </p>
      <ul class="compare-list">
        {[...ticked, ...others.slice(0, ROWS)].map((batch) => (
          <li key={batch.id}>
            <label class="compare-tick">
              <input
                type="checkbox"
                checked={chosen.includes(batch.id)}
                disabled={chosen.length >= MOST_SIDE && !chosen.includes(batch.id)}
                onChange={() => toggle(batch.id)}
              />
              <span>
                {batch.name || say.unnamedBatch} <small>{batch.batchNo || say.noNumber}</small>{' '}
                <small>{batch.day}</small> {batch.demo ? <span class="demo-mark">{say.demo}</span> : null}
              </span>
            </label>
          </li>
        ))}
      </ul>
    </>
  );
}

import { useContext, useState } from 'preact/hooks';
import * as say from '#words/batch-library/batch-row.ts';
import { Links } from '../parts/links.ts';
import type { Shelved } from '../state/database.ts';
import { STATE_WORDS } from '../words/states.ts';
import { archive, beginNext, nameOf, remove } from './shelf-store.ts';

/** One batch of the list: what it is, how it stands, what can be done with it. */
export function BatchRow({ batch }: { batch: Shelved }) {
  const { worksheets } = useContext(Links);
  const [fault, setFault] = useState<string | null>(null);
  const { id, name, batchNo, day, state, stateBy, kitchen, demo, archivedAt } = batch;
  const worksheet = state === 'planned' ? worksheets['batch-formula'] : worksheets['batch-sheet'];
  const called = nameOf(batch);
  const next = async () => {
    try {
      if (await beginNext(id)) location.assign(worksheets['batch-formula'] ?? '');
      else setFault(say.thisRecordCannotBeRead);
    } catch {
      setFault(say.deviceDidNotTakeNewBatch);
    }
  };
  return (
    <li class="shelf-row" data-state={state}>
      <p class="shelf-what">
        <a href={`${worksheet ?? ''}#batch=${encodeURIComponent(id)}`}>{name || say.unnamedBatch}</a>
        <span>{[batchNo || say.noNumber, kitchen].filter(Boolean).join(' · ')}</span>
        {demo ? <span class="demo-mark">{say.demo}</span> : null}
      </p>
      <p class="shelf-day">{day}</p>
      <p class="shelf-state">
        <span class="batch-state" data-state={state}>
          {STATE_WORDS[state]}
        </span>
        {stateBy ? <small>{stateBy}</small> : null}
        {archivedAt ? <small>{say.archived}</small> : null}
      </p>
      <p class="shelf-tools">
        <button type="button" aria-label={say.nextBatchLike(called)} onClick={() => void next()}>
          {say.nextBatch}
        </button>
        <button
          type="button"
          aria-label={`${archivedAt ? say.takeBack : say.archive} ${called}`}
          onClick={() => void archive(batch)}
        >
          {archivedAt ? say.takeBack : say.archive}
        </button>
        <button type="button" aria-label={say.deleteWord(called)} onClick={() => void remove(batch)}>
          {say.deleteWord2}
        </button>
      </p>
      {fault ? (
        <p class="field-problem" role="alert">
          {fault}
        </p>
      ) : null}
    </li>
  );
}

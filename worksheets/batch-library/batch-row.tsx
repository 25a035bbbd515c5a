import { useContext, useState } from 'preact/hooks';
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
      else setFault('This record cannot be read.');
    } catch {
      setFault('This device did not take the new batch.');
    }
  };
  return (
    <li class="shelf-row" data-state={state}>
      <p class="shelf-what">
        <a href={`${worksheet ?? ''}#batch=${encodeURIComponent(id)}`}>{name || 'Unnamed batch'}</a>
        <span>{[batchNo || 'no number', kitchen].filter(Boolean).join(' · ')}</span>
        {demo ? <span class="demo-mark">DEMO</span> : null}
      </p>
      <p class="shelf-day">{day}</p>
      <p class="shelf-state">
        <span class="batch-state" data-state={state}>
          {STATE_WORDS[state]}
        </span>
        {stateBy ? <small>{stateBy}</small> : null}
        {archivedAt ? <small>archived</small> : null}
      </p>
      <p class="shelf-tools">
        <button type="button" aria-label={`Next batch like ${called}`} onClick={() => void next()}>
          Next batch
        </button>
        <button
          type="button"
          aria-label={`${archivedAt ? 'Take back' : 'Archive'} ${called}`}
          onClick={() => void archive(batch)}
        >
          {archivedAt ? 'Take back' : 'Archive'}
        </button>
        <button type="button" aria-label={`Delete ${called}`} onClick={() => void remove(batch)}>
          Delete
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

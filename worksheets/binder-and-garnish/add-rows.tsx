import { newExtender, newGarnishLine } from '@larderwright/calc/binder';
import * as say from '#words/binder-and-garnish/add-rows.ts';
import { newId } from '../state/clock.ts';
import { addRow } from '../state/rows.ts';
import { $life } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';

/** Begins a garnish. */
export function AddGarnish() {
  return <Add label={say.addAGarnish} add={() => addRow('binder.garnish', newGarnishLine(newId()))} />;
}

/** Begins a binder beside the panade. */
export function AddExtender() {
  return <Add label={say.addABinder} add={() => addRow('binder.extenders', newExtender(newId()))} />;
}

function Add({ label, add }: { label: string; add: () => void }) {
  const waking = useShared($life) === 'waking';
  return (
    <p class="buttons">
      <button type="button" class="press-first" disabled={waking} onClick={add}>
        {label}
      </button>
    </p>
  );
}

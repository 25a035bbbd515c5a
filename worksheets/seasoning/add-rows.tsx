import { newLooseSpice, newSeasoningBlend } from '@larderwright/calc/seasoning';
import * as say from '#words/seasoning/add-rows.ts';
import { newId } from '../state/clock.ts';
import { addRow } from '../state/rows.ts';
import { $life } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';

/** Begins a blend. */
export function AddBlend() {
  return <Add label={say.addABlend} add={() => addRow('seasoning.blends', newSeasoningBlend(newId()))} />;
}

/** Begins a seasoning that goes in by itself. */
export function AddLoose() {
  return <Add label={say.addASeasoning} add={() => addRow('seasoning.loose', newLooseSpice(newId()))} />;
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

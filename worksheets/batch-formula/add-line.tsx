import { $life } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { addLine } from './newest-line.ts';

/** Adds a line of a common kind. The part can be changed in the line. */
export function AddLine() {
  const waking = useShared($life) === 'waking';
  return (
    <div class="buttons">
      <button type="button" class="press-first" disabled={waking} onClick={() => addLine('lean')}>
        Add an ingredient
      </button>
      <button type="button" disabled={waking} onClick={() => addLine('curing-salt')}>
        Add a curing salt
      </button>
    </div>
  );
}

import * as say from '#words/batch-formula/add-line.ts';
import { $life } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { fetchLines } from './fetch-lines.ts';
import { addLine } from './newest-line.ts';

/** A failure is told where the lines should stand. */
const prepare = () => {
  fetchLines().catch(() => undefined);
};

/** Adds a line of a common kind. The part can be changed in the line. */
export function AddLine() {
  const waking = useShared($life) === 'waking';
  return (
    // The first line's fields are fetched as the buttons are reached, so that typing on at once loses nothing.
    <div class="buttons" onFocusIn={prepare} onPointerEnter={prepare}>
      <button type="button" class="press-first" disabled={waking} onClick={() => addLine('lean')}>
        {say.addAnIngredient}
      </button>
      <button type="button" disabled={waking} onClick={() => addLine('curing-salt')}>
        {say.addACuringSalt}
      </button>
    </div>
  );
}

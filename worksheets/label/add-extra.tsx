import * as say from '#words/label/add-extra.ts';
import { $life } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';

/** Adds a crust, a jelly or whatever else goes in. Its fields are fetched with the first one. */
export function AddExtra() {
  const waking = useShared($life) === 'waking';
  return (
    <p class="buttons">
      <button
        type="button"
        disabled={waking}
        onClick={() => void import('./extras.tsx').then(({ addExtra }) => addExtra())}
      >
        {say.addWhatIsNotInThe}
      </button>
    </p>
  );
}

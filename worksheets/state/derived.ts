import type { Batch } from '@larderwright/calc/batch';
import { atom, type ReadableAtom } from 'nanostores';
import { $limits } from './limits.ts';
import { $batch, $life } from './store.ts';

/** A number the page shows is either computed from the batch on screen, or plainly not yet. */
export type Derived<T> =
  | { state: 'not-yet' }
  | { state: 'ready'; value: T }
  | { state: 'failed'; detail: string };

const NOT_YET = { state: 'not-yet' } as const;

function failure(error: unknown): { state: 'failed'; detail: string } {
  return { state: 'failed', detail: error instanceof Error ? error.message : String(error) };
}

/**
 * What calc makes of the batch, computed again at every change. The code that computes it is fetched
 * only once there is a batch to compute; until it answers the state is `not-yet`, never a default.
 *
 * @param load fetches the function from batch to values. Let it import a module of the worksheet's own
 *   (`() => import('./compute.ts')…`) that imports calc in the ordinary way: a face of calc that is imported
 *   both on demand and at once lands in the first load whole.
 */
export function derive<T>(load: () => Promise<(batch: Batch) => T>): ReadableAtom<Derived<T>> {
  const $derived = atom<Derived<T>>(NOT_YET);
  let compute: ((batch: Batch) => T) | null = null;
  let loading = false;

  const run = (batch: Batch) => {
    if (!compute) return;
    try {
      $derived.set({ state: 'ready', value: compute(batch) });
    } catch (error) {
      $derived.set(failure(error));
      throw error;
    }
  };

  const wake = async () => {
    if ($life.get() !== 'open' || loading || compute) return;
    loading = true;
    try {
      compute = await load();
      run($batch.get());
    } catch (error) {
      $derived.set(failure(error));
    } finally {
      loading = false;
    }
  };

  if (typeof document !== 'undefined') {
    $batch.listen((batch) => {
      if ($life.get() === 'blank') $derived.set(NOT_YET);
      else run(batch);
    });
    // A withdrawn limit counts as soon as it is known.
    $limits.listen(() => {
      if ($life.get() === 'open') run($batch.get());
    });
    $life.subscribe((life) => {
      if (life === 'blank') $derived.set(NOT_YET);
      // The first edit of a new batch changes the batch while it still counts as blank.
      else if (life === 'open') run($batch.get());
      void wake();
    });
  }
  return $derived;
}

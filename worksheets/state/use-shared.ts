import type { Batch } from '@larderwright/calc/batch';
import type { ReadableAtom } from 'nanostores';
import { createContext } from 'preact';
import { useContext, useEffect, useRef, useState } from 'preact/hooks';
import { getAt, hasPath } from './paths.ts';
import { $batch, emptyBatch } from './store.ts';

/**
 * Whether the island has taken over the server's HTML. Until then every component must show what the server
 * rendered, since hydration does not mend attributes that differ and a stale class here would be a wrong
 * safety mark. Afterwards a component may start from the store at once: a row added later has no
 * counterpart in the server's empty batch. `null`: no island above says so, the component finds out itself.
 */
export const Hydrated = createContext<boolean | null>(null);

/** False in the first render of the island, on the server and in the browser; true from then on. */
export function useHydrated(): boolean {
  const above = useContext(Hydrated);
  const [own, setOwn] = useState(false);
  useEffect(() => setOwn(true), []);
  return above ?? own;
}

/** The value of a store in an island, redrawn whenever it changes. */
export function useShared<T>(store: ReadableAtom<T>): T {
  const hydrated = useHydrated();
  const [, redraw] = useState(0);
  const value = hydrated ? store.get() : (store.init ?? store.get());
  const shown = useRef(value);
  shown.current = value;
  useEffect(() => {
    const look = () => {
      if (!Object.is(store.get(), shown.current)) redraw((times) => times + 1);
    };
    look();
    return store.listen(look);
  }, [store]);
  return value;
}

/**
 * One field of the batch, redrawn only when that field changes. When its row has just been removed the last
 * value stays until the row's own component goes.
 *
 * @returns the value at the path; throws when the path never led anywhere
 */
export function useAt(path: string): unknown {
  const hydrated = useHydrated();
  const [, redraw] = useState(0);
  const shown = useRef<{ path: string; value: unknown } | null>(null);
  const batch: Batch = hydrated ? $batch.get() : emptyBatch;
  const gone = shown.current?.path === path && !hasPath(batch, path);
  const value = gone ? shown.current?.value : getAt(batch, path);
  shown.current = { path, value };
  useEffect(() => {
    const look = () => {
      const now = $batch.get();
      if (hasPath(now, path) && getAt(now, path) !== shown.current?.value) redraw((times) => times + 1);
    };
    look();
    return $batch.listen(look);
  }, [path]);
  return value;
}

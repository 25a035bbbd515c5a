import { useStore } from '@nanostores/preact';
import type { ReadableAtom } from 'nanostores';

/**
 * A store's value in an island. The first render always shows the value the server rendered: hydration
 * does not mend attributes that differ, and a stale class here would be a wrong safety mark.
 */
export function useShared<T>(store: ReadableAtom<T>): T {
  return useStore(store, { ssr: 'initial' });
}

import { useEffect, useState } from 'preact/hooks';
import type { Shelved } from '../state/database.ts';
import { readFigures } from './compare-store.ts';
import type { CompareFigures } from './figures-of.ts';

export type Figures =
  | { readonly state: 'reading' }
  | { readonly state: 'ready'; readonly figures: readonly CompareFigures[]; readonly unreadable: number }
  | { readonly state: 'failed'; readonly detail: string };

/** The figures of these batches, in their order, as soon as they are read. */
export function useFigures(batches: readonly Shelved[]): Figures {
  const [figures, setFigures] = useState<Figures>({ state: 'reading' });
  const key = batches.map(({ id, rev }) => `${id} ${rev}`).join('\n');
  useEffect(() => {
    const stop = new AbortController();
    setFigures({ state: 'reading' });
    readFigures(batches, stop.signal).then(
      (read) => {
        if (read === null) return;
        const known = read.filter((each) => each !== null);
        setFigures({ state: 'ready', figures: known, unreadable: read.length - known.length });
      },
      (error) =>
        setFigures({ state: 'failed', detail: error instanceof Error ? error.message : String(error) }),
    );
    return () => stop.abort();
  }, [key]);
  return figures;
}

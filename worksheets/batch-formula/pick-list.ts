import type { PickItem } from '@larderwright/calc/ingredients';
import { atom } from 'nanostores';
import { pickable } from './line-edits.ts';

/** The ingredient list of the picker, fetched when a field is first reached. */
export type PickList =
  | { state: 'not-asked' | 'fetching' | 'failed' }
  | {
      state: 'here';
      items: readonly PickItem[];
      byId: ReadonlyMap<string, PickItem>;
      search: (text: string) => readonly PickItem[];
    };

export const $pickList = atom<PickList>({ state: 'not-asked' });

/** Most suggestions shown at once: more are found by typing more. */
export const MOST_SHOWN = 30;

/** Fetches the list once. After a failure the next visit of a field tries again. */
export async function fetchPickList(): Promise<void> {
  const { state } = $pickList.get();
  if (state === 'fetching' || state === 'here') return;
  $pickList.set({ state: 'fetching' });
  try {
    const { loadPickList, searchIngredients } = await import('@larderwright/calc/ingredients');
    const items = pickable(await loadPickList());
    $pickList.set({
      state: 'here',
      items,
      byId: new Map(items.map((item) => [item.id, item])),
      search: (text) => searchIngredients(items, text, MOST_SHOWN),
    });
  } catch {
    $pickList.set({ state: 'failed' });
  }
}

import type { PickItem } from '@larderwright/calc/ingredients';
import { useMemo } from 'preact/hooks';
import * as say from '#words/binder-and-garnish/ingredient-box.ts';
import { isCuringSalt, sameName } from '../batch-formula/line-edits.ts';
import { $pickList, fetchPickList } from '../batch-formula/pick-list.ts';
import { ComboBox } from '../parts/combo-box.tsx';
import { getAt, setAt } from '../state/paths.ts';
import { edit } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';

interface Named {
  readonly name: string;
  readonly ingredientId: string | null;
}

/** The name of a row: picked from the composition table, or the kitchen's own words. */
export function IngredientBox({ path, row, label }: { path: string; row: Named; label: string }) {
  const list = useShared($pickList);
  const { name, ingredientId } = row;
  const found = useMemo(
    () =>
      list.state === 'here' && ingredientId === null
        ? list.search(name).filter((item) => !isCuringSalt(item))
        : [],
    [list, name, ingredientId],
  );
  const put = (next: Named) =>
    edit((batch) => setAt(batch, path, { ...(getAt(batch, path) as Named), ...next }));
  const take = (item: PickItem) => put({ name: item.name, ingredientId: item.id });
  const status =
    list.state === 'failed'
      ? say.listCouldNotFetchedNameOwn
      : list.state !== 'here'
        ? say.fetchingTheIngredientList
        : found.length === 0
          ? say.typeWordTwoKeepNameOwn
          : say.found(found.length);
  return (
    <ComboBox
      label={label}
      text={name}
      options={found.map(({ id, name: shown }) => ({ id, label: shown }))}
      status={status}
      onText={(text) => {
        if (text !== name) put({ name: text, ingredientId: null });
      }}
      onPick={({ id }) => {
        const item = found.find((one) => one.id === id);
        if (item) take(item);
      }}
      onReach={fetchPickList}
      onLeave={() => {
        if (list.state !== 'here' || ingredientId !== null) return;
        const item = sameName(list.items, name);
        if (item && !isCuringSalt(item)) take(item);
      }}
      compact
    />
  );
}

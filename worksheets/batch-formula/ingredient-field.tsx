import type { FormulaLine } from '@larderwright/calc/formula';
import type { PickItem } from '@larderwright/calc/ingredients';
import { useMemo } from 'preact/hooks';
import { ComboBox, type ComboOption } from '../parts/combo-box.tsx';
import { editAt } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { isCuringSalt, sameName, withIngredient, withName } from './line-edits.ts';
import { partWasChosen } from './part-field.tsx';
import { $pickList, fetchPickList, MOST_SHOWN, type PickList } from './pick-list.ts';

interface IngredientFieldProps {
  line: FormulaLine;
  focusOnMount: boolean;
}

const shelf = (item: PickItem) =>
  [item.category, item.speciesGroup]
    .filter((word, index, both) => word !== '' && both.indexOf(word) === index)
    .join(', ')
    .replaceAll('-', ' ');

function statusOf(list: PickList, text: string, found: number): string {
  if (list.state === 'failed')
    return 'The ingredient list could not be fetched. A name of your own will do; its figures come from the pack.';
  if (list.state !== 'here') return 'Fetching the ingredient list …';
  if (text.trim() === '')
    return `Type a word or two: ${list.items.length} ingredients, by the names used at the bench too.`;
  if (found === 0) return 'Nothing by that name. It may stay as your own; its figures come from the pack.';
  if (found === MOST_SHOWN) return `The first ${MOST_SHOWN}. Type more to narrow them down.`;
  return found === 1 ? '1 ingredient' : `${found} ingredients`;
}

/** The name of a line: picked from the composition table, or the kitchen's own words. */
export function IngredientField({ line, focusOnMount }: IngredientFieldProps) {
  const list = useShared($pickList);
  const path = `formula.lines.${line.id}`;
  const { name, ingredientId } = line;
  // Every line is drawn again at every key: the search is not.
  const found = useMemo(
    () => (list.state === 'here' && ingredientId === null ? list.search(name) : []),
    [list, name, ingredientId],
  );
  const take = (item: PickItem) => editAt(path, withIngredient(line, item, partWasChosen(line.id)));
  const options: ComboOption[] = found.map((item) => ({
    id: item.id,
    label: isCuringSalt(item) ? 'Curing salt' : item.name,
    detail: isCuringSalt(item) ? 'You type its strength from the pack' : shelf(item),
  }));
  return (
    <ComboBox
      label="Ingredient"
      text={line.name}
      options={options.filter((option, at) => options.findIndex((one) => one.label === option.label) === at)}
      status={statusOf(list, line.name, found.length)}
      onText={(text) => editAt(path, withName(line, text))}
      onPick={(option) => {
        const item = found.find((one) => one.id === option.id);
        if (item) take(item);
      }}
      onReach={fetchPickList}
      onLeave={() => {
        if (list.state !== 'here' || line.ingredientId !== null || line.part === 'curing-salt') return;
        const item = sameName(list.items, line.name);
        if (item && !isCuringSalt(item)) take(item);
      }}
      compact
      focusOnMount={focusOnMount}
    />
  );
}

import type { FormulaLine } from '@larderwright/calc/formula';
import type { PickItem } from '@larderwright/calc/ingredients';
import { useMemo } from 'preact/hooks';
import * as say from '#words/batch-formula/ingredient-field.ts';
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
  if (list.state === 'failed') return say.ingredientListCouldNotFetched;
  if (list.state !== 'here') return say.fetchingTheIngredientList;
  if (text.trim() === '') return say.typeWordTwoIngredientsNames(list.items.length);
  if (found === 0) return say.nothingNameMayStayOwnFigures;
  if (found === MOST_SHOWN) return say.firstTypeMoreNarrowDown(MOST_SHOWN);
  return found === 1 ? say.n1Ingredient : say.ingredients(found);
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
    label: isCuringSalt(item) ? say.curingSalt : item.name,
    detail: isCuringSalt(item) ? say.youTypeItsStrengthFromThe : shelf(item),
  }));
  return (
    <ComboBox
      label={say.ingredient}
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

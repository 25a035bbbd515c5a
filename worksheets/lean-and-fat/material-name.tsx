import type { BlendMaterial } from '@larderwright/calc/blend';
import { useMemo } from 'preact/hooks';
import * as say from '#words/lean-and-fat/material-name.ts';
import { sameName } from '../batch-formula/line-edits.ts';
import { $pickList, fetchPickList } from '../batch-formula/pick-list.ts';
import { ComboBox } from '../parts/combo-box.tsx';
import { editAt } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { blendable, withName, withRow } from './blend-edits.ts';

/** The name of a material: picked from the composition table, or the kitchen's own words. */
export function MaterialName({ material }: { material: BlendMaterial }) {
  const list = useShared($pickList);
  const path = `blend.materials.${material.id}`;
  const { name, ingredientId } = material;
  const found = useMemo(
    () => (list.state === 'here' && ingredientId === null ? blendable(list.search(name)) : []),
    [list, name, ingredientId],
  );
  const status =
    list.state === 'failed'
      ? say.ingredientListCouldNotFetched
      : list.state !== 'here'
        ? say.fetchingTheIngredientList
        : found.length === 0 && name.trim() !== ''
          ? say.nothingNameMayStayOwnFigures
          : say.typeAWordOrTwoOr;
  return (
    <ComboBox
      label={say.material}
      text={name}
      options={found.map((item) => ({
        id: item.id,
        label: item.name,
        detail: item.category.replaceAll('-', ' '),
      }))}
      status={status}
      onText={(text) => editAt(path, withName(material, text))}
      onPick={(option) => {
        const item = found.find(({ id }) => id === option.id);
        if (item) editAt(path, withRow(material, item));
      }}
      onReach={fetchPickList}
      onLeave={() => {
        if (list.state !== 'here' || ingredientId !== null) return;
        const item = sameName(blendable(list.items), name);
        if (item) editAt(path, withRow(material, item));
      }}
      focusOnMount={name === '' && ingredientId === null}
    />
  );
}

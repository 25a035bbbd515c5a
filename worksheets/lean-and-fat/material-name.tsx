import type { BlendMaterial } from '@larderwright/calc/blend';
import { useMemo } from 'preact/hooks';
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
      ? 'The ingredient list could not be fetched. A name of your own will do; its figures come from the pack.'
      : list.state !== 'here'
        ? 'Fetching the ingredient list …'
        : found.length === 0 && name.trim() !== ''
          ? 'Nothing by that name. It may stay as your own; its figures come from the pack.'
          : 'Type a word or two, or a name of your own.';
  return (
    <ComboBox
      label="Material"
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

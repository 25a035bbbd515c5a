import { newMould } from '@larderwright/calc/batch';
import { MOULD_SIZES, type MouldSize } from '@larderwright/calc/mould';
import { useState } from 'preact/hooks';
import * as say from '#words/mould-and-fill/add-mould.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { newId } from '../state/clock.ts';
import { addRow } from '../state/rows.ts';
import { $life } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { mouldOfSize, sizeMeasures, sizeName } from './mould-edits.ts';

function sizeText(size: MouldSize): string {
  const { length, width, depth, diameter } = sizeMeasures(size);
  const round = diameter === undefined ? null : `⌀ ${diameter}`;
  const shown = [round, length, width, depth].filter((part) => part !== undefined && part !== null);
  return `${sizeName(size)} (${shown.join(' × ')} mm)`;
}

/** Begins a mould from a usual size or from nothing. */
export function AddMould() {
  const [sizeId, setSizeId] = useState('');
  const waking = useShared($life) === 'waking';
  const size = MOULD_SIZES.find((each) => each.id === sizeId);
  const add = () => {
    addRow('mould.moulds', size ? mouldOfSize(newId(), size) : newMould(newId()));
    setSizeId('');
  };
  return (
    <div class="add-row">
      <ChoiceField
        label={say.addAMould}
        value={sizeId}
        empty={say.emptyIMeasureItMyself}
        choices={MOULD_SIZES.map((each) => ({ value: each.id, label: sizeText(each) }))}
        onChoose={setSizeId}
        hint={say.usualInsideMeasuresStart}
      />
      <button type="button" class="press-first" disabled={waking} onClick={add}>
        {say.addTheMould}
      </button>
    </div>
  );
}

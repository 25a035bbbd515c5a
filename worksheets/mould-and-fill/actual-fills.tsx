import type { Finding } from '@larderwright/calc/findings';
import type { MouldItem } from '@larderwright/calc/mould';
import { blankEntry, entryValue } from '@larderwright/calc/quantities';
import * as say from '#words/mould-and-fill/actual-fills.ts';
import { at } from '../parts/finding-list.tsx';
import { NumberBox } from '../parts/number-box.tsx';
import { editAt } from '../state/store.ts';
import { fillBoxes, withFill } from './mould-edits.ts';

/** One box for the weight of each filled mould. */
export function ActualFills({ mould, findings }: { mould: MouldItem; findings: readonly Finding[] }) {
  const path = `mould.moulds.${mould.id}.actualFills`;
  const count = entryValue('count', mould.count);
  const boxes = Array.from({ length: fillBoxes(count, mould.actualFills.length) }, (_, index) => index);
  return (
    <fieldset class="fills">
      <legend>{say.asFilledNetWeight}</legend>
      {boxes.map((index) => (
        <NumberBox
          key={index}
          label={boxes.length === 1 ? say.thisMould : say.number(index + 1)}
          kind="mass"
          entry={mould.actualFills[index] ?? blankEntry('g')}
          onEntry={(entry) => editAt(path, withFill(mould.actualFills, index, entry))}
          findings={at(findings, `${path}.${index}`)}
        />
      ))}
    </fieldset>
  );
}

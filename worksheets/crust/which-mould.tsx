import { newMould } from '@larderwright/calc/batch';
import type { Finding } from '@larderwright/calc/findings';
import type { MouldItem } from '@larderwright/calc/mould';
import * as say from '#words/crust/which-mould.ts';
import { MeasureFields } from '../mould-and-fill/measure-fields.tsx';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at, FindingList } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { newId } from '../state/clock.ts';
import { addRow } from '../state/rows.ts';
import { $life, editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { SHAPE_NAMES } from '../words/mould-names.ts';
import { choicesOf } from '../words/whole-muscle-names.ts';

/** The batch's mould that the crust is for, its bare measures, and how many of it. */
export function WhichMould({ findings }: { findings: readonly Finding[] }) {
  const moulds = useAt('mould.moulds') as readonly MouldItem[];
  const chosen = useAt('crust.mouldId');
  const waking = useShared($life) === 'waking';
  const mould = moulds.find(({ id }) => id === chosen) ?? (moulds.length === 1 ? moulds[0] : undefined);
  const add = () => {
    const id = newId();
    addRow('mould.moulds', newMould(id));
    editAt('crust.mouldId', id);
  };
  return (
    <>
      <p class="say">{say.mouldsThoseBatchMeasureBare}</p>
      <div class="fields">
        {moulds.length === 0 ? null : (
          <ChoiceField
            label={say.mouldOfTheBatch}
            value={mould?.id ?? ''}
            empty={say.notChosen}
            choices={moulds.map(({ id, name, shape }, place) => ({
              value: id,
              label: name.trim() || say.mould(place + 1, SHAPE_NAMES[shape]),
            }))}
            onChoose={(value) => editAt('crust.mouldId', value === '' ? null : value)}
          />
        )}
        {mould === undefined ? null : <OneMould mould={mould} findings={findings} />}
      </div>
      <FindingList findings={at(findings, 'crust.mouldId')} />
      <p class="buttons">
        <button type="button" disabled={waking} onClick={add}>
          {say.addAMouldToTheBatch}
        </button>
      </p>
    </>
  );
}

function OneMould({ mould, findings }: { mould: MouldItem; findings: readonly Finding[] }) {
  const path = `mould.moulds.${mould.id}`;
  return (
    <>
      <ChoiceField
        label={say.shape}
        value={mould.shape}
        choices={choicesOf(SHAPE_NAMES)}
        onChoose={(value) => editAt(`${path}.shape`, value)}
      />
      <MeasureFields mould={mould} findings={findings} />
      <NumberField path={`${path}.count`} label={say.howMany} kind="count" range={{ min: 0, max: 1000 }} />
    </>
  );
}

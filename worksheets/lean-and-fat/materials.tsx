import type { BlendMaterial } from '@larderwright/calc/blend';
import { Fragment } from 'preact';
import * as say from '#words/lean-and-fat/materials.ts';
import { CouldNot } from '../parts/computed.tsx';
import { RemovedRowLine } from '../parts/row-tools.tsx';
import { useAt, useShared } from '../state/use-shared.ts';
import { $blend } from './computed.ts';
import { MaterialRow } from './material-row.tsx';

/** Every material on hand. */
export function Materials() {
  const materials = useAt('blend.materials') as readonly BlendMaterial[];
  const computed = useShared($blend);
  const ready = computed.state === 'ready' ? computed.value : null;
  return (
    <>
      {computed.state === 'failed' ? <CouldNot detail={computed.detail} /> : null}
      {materials.length === 0 ? <p class="say">{say.nothingYetAddWhatLiesChiller}</p> : null}
      <ol class="ledger">
        {materials.map((material, place) => (
          <Fragment key={material.id}>
            <RemovedRowLine list="blend.materials" place={place} as="li" />
            <MaterialRow
              material={material}
              place={place}
              last={place === materials.length - 1}
              line={ready?.values.lines.find(({ materialId }) => materialId === material.id) ?? null}
              figures={ready?.figures.get(material.id) ?? ''}
              findings={ready?.findings ?? []}
              currency={ready?.currency ?? ''}
            />
          </Fragment>
        ))}
        <RemovedRowLine list="blend.materials" place={materials.length} as="li" />
      </ol>
    </>
  );
}

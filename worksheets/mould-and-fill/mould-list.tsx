import type { MouldItem } from '@larderwright/calc/mould';
import { Fragment } from 'preact';
import { RemovedRowLine } from '../parts/row-tools.tsx';
import { useAt, useShared } from '../state/use-shared.ts';
import { $mould } from './computed.ts';
import { MouldSection } from './mould-section.tsx';

/** Every mould of the batch. */
export function MouldList() {
  const computed = useShared($mould);
  const moulds = useAt('mould.moulds') as readonly MouldItem[];
  const ready = computed.state === 'ready' ? computed.value : null;
  return (
    <>
      {moulds.map((mould, place) => (
        <Fragment key={mould.id}>
          <RemovedRowLine list="mould.moulds" place={place} />
          <MouldSection
            mould={mould}
            place={place}
            last={place === moulds.length - 1}
            fill={ready?.values.moulds.find((fill) => fill.id === mould.id) ?? null}
            findings={ready?.findings ?? []}
          />
        </Fragment>
      ))}
      <RemovedRowLine list="mould.moulds" place={moulds.length} />
    </>
  );
}

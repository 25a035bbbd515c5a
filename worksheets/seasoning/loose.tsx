import type { LooseSpice } from '@larderwright/calc/seasoning';
import { Fragment } from 'preact';
import { RemovedRowLine } from '../parts/row-tools.tsx';
import { useAt, useShared } from '../state/use-shared.ts';
import { $seasoning } from './computed.ts';
import { SpiceRow } from './spice-row.tsx';

const LIST = 'seasoning.loose';

/** Seasonings that go in without a blend. */
export function LooseList() {
  const rows = useAt(LIST) as readonly LooseSpice[];
  const computed = useShared($seasoning);
  const ready = computed.state === 'ready' ? computed.value : null;
  return (
    <ol class="ledger">
      {rows.map((row, place) => (
        <Fragment key={row.id}>
          <RemovedRowLine list={LIST} place={place} as="li" />
          <SpiceRow
            list={LIST}
            row={row}
            place={place}
            last={place === rows.length - 1}
            weight={ready?.values.loose.find(({ id }) => id === row.id) ?? null}
            computed={ready}
          />
        </Fragment>
      ))}
      <RemovedRowLine list={LIST} place={rows.length} as="li" />
    </ol>
  );
}

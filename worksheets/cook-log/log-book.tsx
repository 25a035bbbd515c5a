import * as say from '#words/cook-log/log-book.ts';
import { FittedChart } from '../charts/index.ts';
import { Computed } from '../parts/computed.tsx';
import { LastReadings } from '../readings/last-readings.tsx';
import { PencilRows } from '../readings/pencil-rows.tsx';
import { ReadingTable } from '../readings/reading-table.tsx';
import type { WrittenLog } from '../readings/written-log.tsx';
import { useShared } from '../state/use-shared.ts';
import { $cook } from './computed.ts';

/** The newest readings, the curve, and the log that is being written. */
export function LogBook({ written }: { written: WrittenLog }) {
  const { log, name } = written;
  return (
    <>
      <LastReadings readings={log?.readings ?? []} />
      {log && log.readings.length > 0 ? (
        <Computed of={useShared($cook)}>
          {({ chart, notes }) => (
            <>
              {chart.series.length > 0 ? <FittedChart model={chart} title={say.coreThroughTheCook} /> : null}
              <ReadingTable log={log} name={name} corrected={notes.corrected} says={notes.says} />
            </>
          )}
        </Computed>
      ) : (
        <PencilRows />
      )}
    </>
  );
}

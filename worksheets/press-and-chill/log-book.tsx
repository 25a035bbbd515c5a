import * as say from '#words/press-and-chill/log-book.ts';
import { FittedChart } from '../charts/index.ts';
import { Computed } from '../parts/computed.tsx';
import { LastReadings } from '../readings/last-readings.tsx';
import { PencilRows } from '../readings/pencil-rows.tsx';
import { ReadingTable } from '../readings/reading-table.tsx';
import type { WrittenLog } from '../readings/written-log.tsx';
import { useShared } from '../state/use-shared.ts';
import { $chill } from './computed.ts';

/** The newest readings, the curve under its window, and the log from the end of the heat on. */
export function LogBook({ written }: { written: WrittenLog }) {
  const { log, name } = written;
  return (
    <>
      <LastReadings readings={log?.readings ?? []} />
      {log && log.readings.length > 0 ? (
        <Computed of={useShared($chill)}>
          {({ chart, notes, cool }) => (
            <>
              {chart.series.length > 0 ? <FittedChart model={chart} title={say.coreThroughTheChill} /> : null}
              <ReadingTable
                log={log}
                name={name}
                corrected={notes.corrected}
                says={notes.says}
                fromMs={cool.coolings[0]?.heatEndMs ?? null}
              />
            </>
          )}
        </Computed>
      ) : (
        <PencilRows />
      )}
    </>
  );
}

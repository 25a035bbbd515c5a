import type { LogBlock, SheetReading } from './sheet-model.ts';
import { Flag } from './write-in.tsx';

/** Boxes for readings a pencil still has to write. */
const BLANK_READINGS = 12;

/** The readings of one probe as a strip of time over temperature; without a log, empty boxes. */
export function LogStrip({ log, blank = BLANK_READINGS }: { log: LogBlock | null; blank?: number }) {
  const readings: readonly (SheetReading | null)[] = log?.readings.length
    ? log.readings
    : Array.from({ length: blank }, () => null);
  return (
    <div class="log-strip">
      <p class="rule-line">
        {log ? (
          <>
            {log.name}: probe {log.probe || 'not named'}, reads{' '}
            {log.offset ? (
              <>
                {log.offset.text}
                <Flag flag={log.offset.flag} /> off
              </>
            ) : (
              'unknown offset'
            )}
            , error{' '}
            {log.error ? (
              <>
                ± {log.error.text}
                <Flag flag={log.error.flag} />
              </>
            ) : (
              'NOT ENTERED'
            )}
            {log.count > log.readings.length
              ? `. ${log.count} readings kept; the ${log.readings.length} that decide are printed`
              : `. ${log.count} readings`}
          </>
        ) : (
          'Probe ________  reads ____ °C off, error ± ____ °C'
        )}
      </p>
      <div class="log-boxes">
        {readings.map((reading, index) => (
          <span class="log-box" key={reading ? `${reading.clock} ${index}` : index}>
            <span class="log-time">{reading?.clock ?? ''}</span>
            <span class="log-temp">
              {reading ? reading.temperature : <span class="write-in-unit">°C</span>}
              {reading?.remark ? <span class="log-remark"> {reading.remark}</span> : null}
            </span>
          </span>
        ))}
      </div>
    </div>
  );
}

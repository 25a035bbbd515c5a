import * as say from '#words/batch-sheet/log-strip.ts';
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
        {log
          ? say.probeReadsError(
              log.name,
              log.probe || say.notNamed,
              log.offset ? say.off(log.offset.text, <Flag flag={log.offset.flag} />) : say.unknownOffset,
              log.error ? (
                <>
                  ± {log.error.text}
                  <Flag flag={log.error.flag} />
                </>
              ) : (
                say.notEntered
              ),
              log.count > log.readings.length
                ? say.readingsKeptDecidePrinted(log.count, log.readings.length)
                : say.readings(log.count),
            )
          : say.probeReadsCOffErrorC}
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

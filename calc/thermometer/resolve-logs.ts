import type { ProbeLog } from '../process/index.ts';
import { blankEntry, enteredEntry, fixedText, type Rounding } from '../quantities/index.ts';
import { type CheckedThermometer, checkThermometer } from './check-thermometer.ts';
import { offsetAtC } from './offset-at.ts';
import type { ThermometerSlice } from './slice.ts';
import { daysOf, placeOf } from './stage.ts';

const text = (value: number, rounding: Rounding = 'nearest') =>
  fixedText(value, 2, rounding).replace('−', '-');

function withCheck(log: ProbeLog, checked: CheckedThermometer, limitC: number): ProbeLog {
  const { iceC, boilC, boilsAtC } = checked;
  const offsetC = checked.state === 'pass' ? offsetAtC(checked, limitC) : null;
  const named = { ...log, probeName: log.probeName.trim() === '' ? checked.name : log.probeName };
  // A thermometer that failed, or whose check is old, tells nothing of its log.
  if (offsetC === null) return { ...named, offset: blankEntry('dC'), error: blankEntry('dC') };
  // What printing the offset to hundredths leaves out is counted into the error.
  const left = Math.abs(offsetC - Number(text(offsetC)));
  const twoPoint = iceC !== null && boilC !== null && boilsAtC !== null && boilC > iceC;
  return {
    ...named,
    offset: enteredEntry(text(offsetC), 'dC'),
    error:
      checked.errorC === null
        ? blankEntry('dC')
        : enteredEntry(text(checked.errorC + (twoPoint ? 0 : left), 'up'), 'dC'),
    ...(twoPoint ? { line: { iceShownC: iceC, boilShownC: boilC, boilsAtC } } : {}),
  };
}

/**
 * The logs with offset and error from the check of the thermometer each names. A log that names none, or one that is
 * gone, keeps what was typed beside it.
 *
 * @param limitC temperature at which the one printed offset is told; every reading is put right at its own
 */
export function resolveLogs(
  logs: readonly ProbeLog[],
  slice: ThermometerSlice,
  limitC: number,
  today: string,
): ProbeLog[] {
  const place = placeOf(slice);
  return logs.map((log) => {
    const thermometer = slice.thermometers.find(({ id }) => id === log.thermometerId);
    if (!thermometer) return log;
    const days = daysOf(log);
    const checked = checkThermometer(thermometer, { ...place, days: days.length > 0 ? days : [today] });
    return withCheck(log, checked, limitC);
  });
}

import { fixedText } from '@larderwright/calc/quantities';
import type { ProbeStand, Stand } from '../cook-log/stand-of.ts';
import { clockAt, dateAt, dayWords, durationWords } from '../parts/clock-text.ts';

const MINUTE_MS = 60_000;
/** Under this much left, seconds matter. */
const SHORT_S = 120;

/** The clock of a moment, never earlier than it: whole minutes are rounded up. */
function clockUp(atMs: number, offsetMin: number, withSeconds: boolean): string {
  if (withSeconds) {
    const upMs = Math.ceil(atMs / 1000) * 1000;
    const second = Math.floor((upMs % MINUTE_MS) / 1000);
    return `${clockAt(upMs, offsetMin)}:${String(second).padStart(2, '0')}`;
  }
  return clockAt(Math.ceil(atMs / MINUTE_MS) * MINUTE_MS, offsetMin);
}

/** The one line that is read from across the kitchen. */
export function standLine({ kind }: Stand, reasonTitle: string): string {
  switch (kind) {
    case 'complete':
      return 'Limit complete.';
    case 'holding':
      return 'Limit not complete: keep the probe in, do not chill.';
    case 'coming-up':
      return 'Limit not reached yet: keep cooking, keep the probe in.';
    case 'failed':
      return 'Limit not held: hold the product, do not serve it.';
    case 'unchecked':
      return 'The probe’s offset or error is not entered, so nothing can pass. Keep cooking.';
    case 'unknown':
      return reasonTitle;
  }
}

/** `Hold until 15:20, 4 min more`, or null when nothing is being held. */
export function holdUntilWords({ untilMs, remainingS }: Stand, offsetMin: number): string | null {
  if (untilMs === null) return null;
  const clock = clockUp(untilMs, offsetMin, remainingS < SHORT_S);
  return `Hold until ${clock}, ${durationWords(remainingS / 60, 'up')} more, and take a reading then.`;
}

/** How far one probe is, in a sentence. */
export function probeStandWords(probe: ProbeStand, offsetMin: number): string {
  const { lastC, lastMs, actionC, runMs, countedS } = probe;
  const moment = (ms: number) => clockAt(ms, offsetMin);
  if (probe.state === 'pass' && runMs) {
    const day =
      dateAt(runMs[0], offsetMin) === dateAt(runMs[1], offsetMin)
        ? ''
        : ` (${dayWords(dateAt(runMs[1], offsetMin))})`;
    const span =
      runMs[0] === runMs[1]
        ? `at ${moment(runMs[0])}`
        : `from ${moment(runMs[0])} to ${moment(runMs[1])}${day}`;
    return `Counted on readings ${span}: ${durationWords(countedS / 60, 'down')}.`;
  }
  if (lastC === null || lastMs === null) return 'No reading that counts stands last.';
  const corrected = probe.corrected ? ', corrected,' : '';
  const shown = `Last reading${corrected} ${fixedText(lastC, 1, 'down')} °C at ${moment(lastMs)}`;
  if (actionC === null) return `${shown}.`;
  if (probe.holding) return `${shown}. Counted so far: ${durationWords(countedS / 60, 'down')}.`;
  return `${shown}: ${fixedText(actionC - lastC, 1, 'up')} °C below ${fixedText(actionC, 1, 'up')} °C.`;
}

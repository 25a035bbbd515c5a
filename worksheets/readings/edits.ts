import { type Batch, newProbeLog, newStep } from '@larderwright/calc/batch';
import type { ProbeLog, ProbeReading, ProcessStep, StepKind } from '@larderwright/calc/process';
import { blankEntry } from '@larderwright/calc/quantities';
import * as say from '#words/readings/edits.ts';
import { benchNow } from '../state/bench-clock.ts';
import { newId } from '../state/clock.ts';
import { keptSetting } from '../state/kept-setting.ts';
import { edit } from '../state/store.ts';

type Process = Batch['process'];

const withProcess = (batch: Batch, change: Partial<Process>): Batch => ({
  ...batch,
  process: { ...batch.process, ...change },
});

const MINUTE_MS = 60_000;

/** Id that stands for a log or step the blank form shows before anything is typed into it. */
export const FIRST = 'first';

/** Changes a probe log. `FIRST` makes the first one when there is none. */
export function changeLog(logId: string, change: (log: ProbeLog) => ProbeLog): void {
  edit((batch) => {
    const { logs } = batch.process;
    if (logId === FIRST && logs.length === 0) {
      return withProcess(batch, { logs: [change(newProbeLog(newId(), null))] });
    }
    const id = logId === FIRST ? logs[0]?.id : logId;
    return withProcess(batch, { logs: logs.map((log) => (log.id === id ? change(log) : log)) });
  });
}

/** True where something stands in the log that was typed, by the clock, after this reading: the clock was set back. */
function clockSetBack(readings: readonly ProbeReading[], { enteredAt }: ProbeReading): boolean {
  const typedMs = enteredAt === null ? Number.NaN : Date.parse(enteredAt);
  return readings.some(
    (other) => other.enteredAt !== null && Date.parse(other.enteredAt) > typedMs + MINUTE_MS,
  );
}

/**
 * Puts a reading where its time belongs, after those of the same moment. Order tells what was written when. Where the
 * clock was set back meanwhile its times tell no order: the reading stays last, so that it is marked.
 */
function placed(readings: readonly ProbeReading[], reading: ProbeReading): ProbeReading[] {
  if (clockSetBack(readings, reading)) return [...readings, reading];
  const atMs = Date.parse(reading.at);
  const after = readings.findLastIndex((other) => Date.parse(other.at) <= atMs);
  return readings.toSpliced(after + 1, 0, reading);
}

/** Adds one reading that a person timed. */
export function addReading(logId: string, reading: ProbeReading): void {
  changeLog(logId, (log) => ({ ...log, readings: placed(log.readings, reading) }));
}

/** Adds the readings of a file as they stand there: an order that makes no sense must stay to be seen. */
export function addReadings(logId: string, readings: readonly ProbeReading[]): void {
  changeLog(logId, (log) => ({ ...log, readings: [...log.readings, ...readings] }));
}

/**
 * Changes one reading. A new time or temperature is a new entry: the moment it was typed goes with it, so
 * that writing a log up at night shows.
 */
export function changeReading(
  logId: string,
  readingId: string,
  patch: Partial<Pick<ProbeReading, 'at' | 'temperature' | 'initials' | 'excluded'>>,
): void {
  const rewritten = 'at' in patch || 'temperature' in patch;
  const stamp = rewritten ? { enteredAt: benchNow() } : {};
  changeLog(logId, (log) => {
    const before = log.readings.find((reading) => reading.id === readingId);
    if (!before) return log;
    const after = { ...before, ...patch, ...stamp };
    if (after.at === before.at) {
      return { ...log, readings: log.readings.map((reading) => (reading === before ? after : reading)) };
    }
    return {
      ...log,
      readings: placed(
        log.readings.filter((reading) => reading !== before),
        after,
      ),
    };
  });
}

/** A step that has not begun, to be filled in in the scale this device writes first. */
export function stepHere(kind: StepKind): ProcessStep {
  const step = newStep(newId(), kind);
  return keptSetting('tempFirst') === 'F'
    ? { ...step, medium: blankEntry('F'), oven: blankEntry('F') }
    : step;
}

/** Steps stand in the order of the work: what heats goes before the chilling that is already there. */
function inOrder(steps: readonly ProcessStep[], step: ProcessStep): ProcessStep[] {
  const chill = steps.findIndex((each) => each.kind === 'chill');
  const at = step.kind === 'chill' || chill < 0 ? steps.length : chill;
  return steps.toSpliced(at, 0, step);
}

/** Changes a step. `FIRST` makes one of this kind when there is none of it. */
export function changeStep(stepId: string, kind: StepKind, patch: Partial<ProcessStep>): void {
  edit((batch) => {
    const { steps } = batch.process;
    if (stepId === FIRST && !steps.some((step) => step.kind === kind)) {
      return withProcess(batch, { steps: inOrder(steps, { ...stepHere(kind), ...patch }) });
    }
    const id = stepId === FIRST ? steps.find((step) => step.kind === kind)?.id : stepId;
    return withProcess(batch, {
      steps: steps.map((step) => (step.id === id ? { ...step, ...patch } : step)),
    });
  });
}

/** Readings in order of time; those of one moment stay as they were put in. */
export function byTime(readings: readonly ProbeReading[]): ProbeReading[] {
  return readings
    .map((reading) => ({ reading, atMs: Date.parse(reading.at) }))
    .sort((a, b) => a.atMs - b.atMs)
    .map(({ reading }) => reading);
}

/** What a log is called where several stand side by side. */
export function logName(log: ProbeLog, index: number): string {
  return log.name.trim() || log.probeName.trim() || say.probe2(index + 1);
}

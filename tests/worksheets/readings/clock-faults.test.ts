import { newReading, newStep } from '@larderwright/calc/batch';
import { coolRuleSet, coolStage, judgeCooling } from '@larderwright/calc/cooling';
import { checkLog } from '@larderwright/calc/probe-log';
import type { ProbeLog } from '@larderwright/calc/process';
import { enteredEntry } from '@larderwright/calc/quantities';
import { beforeEach, describe, expect, it } from 'vitest';
import { isoInZone } from '../../../worksheets/parts/clock-text.ts';
import { addReading, changeLog, FIRST } from '../../../worksheets/readings/edits.ts';
import { $batch, $life, emptyBatch } from '../../../worksheets/state/store.ts';

const MIN = 60_000;
const ZONE = 'Europe/Berlin';

beforeEach(() => {
  $batch.set(emptyBatch);
  $life.set('blank');
  changeLog(FIRST, (log) => ({ ...log, offset: enteredEntry('0', 'dC'), error: enteredEntry('0.5', 'dC') }));
});

function theLog(): ProbeLog {
  const [log] = $batch.get().process.logs;
  if (!log) throw new Error('There is no log');
  return log;
}

/** A core read and typed at once, by a clock that shows this moment. */
function read(tempC: number, shownMs: number): void {
  const stamp = isoInZone(shownMs, ZONE);
  addReading(theLog().id, newReading(`${theLog().readings.length}`, stamp, String(tempC), 'C', stamp));
}

const START_MS = Date.parse('2026-11-20T13:00:00Z');

describe('a clock that is set back in the middle of a log', () => {
  it('leaves the reading where it was written, marked, and makes no quick cooling of a slow one', () => {
    // In truth 57 to 21 °C takes 130 minutes. After 80 of them somebody sets the clock back by half an hour.
    for (const [minute, tempC] of [
      [0, 60],
      [10, 56],
      [40, 45],
      [70, 33],
    ] as const)
      read(tempC, START_MS + minute * MIN);
    for (const [minute, tempC] of [
      [90, 29],
      [115, 25],
      [140, 20],
    ] as const)
      read(tempC, START_MS + (minute - 30) * MIN);
    const { readings } = checkLog(theLog());
    expect(readings.find(({ tempC }) => tempC === 29)?.doubt).toBe('clock-back');
    const stamp = (ms: number) => isoInZone(ms, ZONE);
    const steps = [
      { ...newStep('cook', 'cook'), startedAt: stamp(START_MS - 90 * MIN), endedAt: stamp(START_MS - MIN) },
      { ...newStep('chill', 'chill'), startedAt: stamp(START_MS) },
    ];
    const process = { ...$batch.get().process, coolRuleSetId: 'us-food-code', steps };
    // By the clock it took 110 minutes of the 120 allowed.
    const [leg] = coolStage({ process }).verdicts;
    expect(leg).toMatchObject({ state: 'cannot-tell', reason: 'cool.clock-back' });
  });

  it('does not doubt what is written up later with its own time', () => {
    read(70, START_MS);
    read(71, START_MS + 20 * MIN);
    const stamp = isoInZone(START_MS + 10 * MIN, ZONE);
    addReading(theLog().id, newReading('late', stamp, '70.5', 'C', isoInZone(START_MS + 25 * MIN, ZONE)));
    expect(checkLog(theLog()).readings.map(({ id, doubt }) => [id, doubt])).toEqual([
      ['0', null],
      ['late', null],
      ['1', null],
    ]);
  });
});

describe('a log through the night the clocks change', () => {
  // Directive 2000/84/EC: 01:00 UTC on the last Sunday of October and of March.
  it.each([
    ['back', Date.parse('2026-10-25T00:00:00Z'), '02:30', '02:30'],
    ['forward', Date.parse('2026-03-29T00:00:00Z'), '01:30', '03:30'],
  ])('%s keeps order, gaps and verdict', (_, startMs, first, second) => {
    const core = (minute: number) => Math.round((4 + 56 * Math.exp(-minute / 70)) * 10) / 10;
    const minutes = Array.from({ length: 31 }, (_unused, index) => index * 10);
    for (const minute of minutes) read(core(minute), startMs + minute * MIN);
    const log = theLog();
    const clocks = log.readings.map(({ at }) => at.slice(11, 16));
    // The wall shows one hour twice, or not at all.
    expect([clocks[3], clocks[9]]).toEqual([first, second]);
    const { readings } = checkLog(log);
    expect(readings.map(({ atMs }) => (atMs - startMs) / MIN)).toEqual(minutes);
    expect(readings.every(({ doubt }) => doubt === null)).toBe(true);
    const judged = (fromMs: number) =>
      judgeCooling(
        minutes.map((minute) => ({ atMs: fromMs + minute * MIN, tempC: core(minute), counts: true })),
        coolRuleSet('us-food-code')?.legs ?? [],
        { errorC: 0.5, offsetKnown: true, unitSuspect: false, heatEndMs: fromMs },
      ).map(({ state, worstMin }) => [state, worstMin]);
    const ofLog = judgeCooling(
      readings.map(({ atMs, tempC }) => ({ atMs, tempC: tempC ?? 0, counts: true })),
      coolRuleSet('us-food-code')?.legs ?? [],
      { errorC: 0.5, offsetKnown: true, unitSuspect: false, heatEndMs: startMs },
    ).map(({ state, worstMin }) => [state, worstMin]);
    expect(ofLog).toEqual(judged(START_MS));
  });
});

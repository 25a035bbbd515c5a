import { newReading } from '@larderwright/calc/batch';
import { beforeEach, describe, expect, it } from 'vitest';
import {
  addReading,
  addReadings,
  byTime,
  changeLog,
  changeReading,
  changeStep,
  FIRST,
  logName,
} from '../../../worksheets/readings/edits.ts';
import { $batch, $life, emptyBatch } from '../../../worksheets/state/store.ts';

const reading = (id: string, clock: string, text = '70', enteredAt: string | null = null) =>
  newReading(id, `2026-03-03T${clock}:00+00:00`, text, 'C', enteredAt);
const process = () => $batch.get().process;

beforeEach(() => {
  $batch.set(emptyBatch);
  $life.set('blank');
});

describe('the first probe', () => {
  it('is born with the first thing said about it, and stays one', () => {
    changeLog(FIRST, (log) => ({ ...log, probeName: 'K' }));
    changeLog(FIRST, (log) => ({ ...log, probeName: 'K-2' }));
    expect(process().logs).toHaveLength(1);
    expect(process().logs[0]?.probeName).toBe('K-2');
    expect($life.get()).toBe('open');
  });

  it('has an unknown offset and an unknown error, not zero', () => {
    addReading(FIRST, reading('a', '10:00'));
    expect(process().logs[0]?.offset.text).toBe('');
    expect(process().logs[0]?.error.text).toBe('');
  });
});

describe('readings', () => {
  it('typed with their time are put where the time belongs', () => {
    addReading(FIRST, reading('b', '10:10'));
    addReading(FIRST, reading('a', '10:00'));
    addReading(FIRST, reading('c', '10:10', '71'));
    expect(process().logs[0]?.readings.map((each) => each.id)).toEqual(['a', 'b', 'c']);
  });

  it('of a file stay in the order of the file', () => {
    addReadings(FIRST, [reading('b', '10:10'), reading('a', '10:00')]);
    expect(process().logs[0]?.readings.map((each) => each.id)).toEqual(['b', 'a']);
  });

  it('carry the moment of a correction, so that writing up at night shows', () => {
    addReading(FIRST, reading('a', '10:00', '70', '2026-03-03T10:00:05+00:00'));
    const logId = process().logs[0]?.id ?? '';
    const before = process().logs[0]?.readings[0];
    if (!before) throw new Error('no reading');
    changeReading(logId, 'a', { temperature: { ...before.temperature, text: '71' } });
    const after = process().logs[0]?.readings[0];
    expect(after?.temperature.text).toBe('71');
    expect(after?.enteredAt).not.toBe(before.enteredAt);
  });

  it('keep the moment they were typed when only initials or an exclusion change', () => {
    addReading(FIRST, reading('a', '10:00', '70', '2026-03-03T10:00:05+00:00'));
    const logId = process().logs[0]?.id ?? '';
    changeReading(logId, 'a', { initials: 'TW' });
    changeReading(logId, 'a', {
      excluded: { reason: 'slipped', initials: 'TW', at: '2026-03-03T11:00:00Z' },
    });
    const after = process().logs[0]?.readings[0];
    expect(after?.enteredAt).toBe('2026-03-03T10:00:05+00:00');
    expect(after?.excluded?.reason).toBe('slipped');
  });

  it('move when their time is put right', () => {
    addReadings(FIRST, [reading('a', '10:00'), reading('b', '10:10'), reading('c', '10:20')]);
    const logId = process().logs[0]?.id ?? '';
    changeReading(logId, 'a', { at: '2026-03-03T10:15:00+00:00' });
    expect(process().logs[0]?.readings.map((each) => each.id)).toEqual(['b', 'a', 'c']);
  });

  it('are shown in order of time, those of one moment as they were put in', () => {
    const log = [reading('b', '10:10'), reading('a', '10:00'), reading('c', '10:10')];
    expect(byTime(log).map((each) => each.id)).toEqual(['a', 'b', 'c']);
    expect(log.map((each) => each.id)).toEqual(['b', 'a', 'c']);
  });
});

describe('steps', () => {
  it('that heat stand before the chilling', () => {
    changeStep(FIRST, 'chill', { startedAt: '2026-03-03T12:00:00+00:00' });
    changeStep(FIRST, 'cook', { startedAt: '2026-03-03T09:00:00+00:00' });
    expect(process().steps.map((step) => step.kind)).toEqual(['cook', 'chill']);
  });

  it('are changed, not doubled, by the blank form', () => {
    changeStep(FIRST, 'cook', { note: 'a' });
    changeStep(FIRST, 'cook', { note: 'ab' });
    expect(process().steps.map((step) => step.note)).toEqual(['ab']);
  });
});

describe('logName', () => {
  it('takes the place, else the probe, else a number', () => {
    changeLog(FIRST, (log) => ({ ...log, probeName: 'K-2' }));
    const log = process().logs[0];
    if (!log) throw new Error('no log');
    expect(logName({ ...log, name: ' front left ' }, 0)).toBe('front left');
    expect(logName(log, 0)).toBe('K-2');
    expect(logName({ ...log, probeName: '' }, 1)).toBe('Probe 2');
  });
});

import { newProbeLog, newReading, newStep } from '@larderwright/calc/batch';
import { checkLog, hottestMediumC, worstOf } from '@larderwright/calc/probe-log';
import type { ProbeLog } from '@larderwright/calc/process';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';

const at = (clock: string) => `2026-03-10T${clock}:00+00:00`;

function log(text: string, offset = '0', error = '0.5', unit: 'C' | 'F' = 'C'): ProbeLog {
  const readings = text.split(',').map((pair, index) => {
    const [clock = '', figure = ''] = pair.trim().split(' ');
    return newReading(`r${index}`, at(clock), figure, unit, null);
  });
  return {
    ...newProbeLog('log', null),
    offset: enteredEntry(offset, 'dC'),
    error: enteredEntry(error, 'dC'),
    readings,
  };
}

const states = (given: ProbeLog, hottest: number | null = null) =>
  checkLog(given, hottest).readings.map((reading) => reading.doubt ?? reading.state);

// Common practice, no source: what a probe in a core can and cannot show.
describe('checkLog', () => {
  it('takes the offset off every reading', () => {
    const checked = checkLog(log('10:00 70.5, 10:02 70.6', '0.6'));
    expect(checked.readings.map((reading) => reading.tempC?.toFixed(1))).toEqual(['69.9', '70.0']);
    expect(checked).toMatchObject({ offsetC: 0.6, errorC: 0.5 });
  });

  it('reads Fahrenheit, with offset and error as differences of Fahrenheit', () => {
    const given = log('10:00 160, 10:02 161', '1.8', '0.9', 'F');
    const checked = checkLog({
      ...given,
      offset: enteredEntry('1.8', 'dF'),
      error: enteredEntry('0.9', 'dF'),
    });
    expect(checked.offsetC).toBeCloseTo(1, 12);
    expect(checked.errorC).toBeCloseTo(0.5, 12);
    expect(checked.readings[0]?.tempC).toBeCloseTo(((160 - 32) * 5) / 9 - 1, 12);
    expect(checked.readings[0]?.unit).toBe('F');
  });

  it('takes the scale a figure names itself', () => {
    expect(checkLog(log('10:00 160°F')).readings[0]).toMatchObject({ unit: 'F', state: 'counts' });
  });

  it('knows neither offset nor error of a probe nobody checked', () => {
    expect(checkLog(log('10:00 70', '', ''))).toMatchObject({ offsetC: null, errorC: null });
    expect(checkLog(log('10:00 70', 'x', '-0.5'))).toMatchObject({ offsetC: null, errorC: null });
  });

  it.each([
    ['155 typed in a Celsius log', '10:00 70, 10:02 155, 10:04 71', ['counts', 'too-hot', 'counts']],
    ['a probe in the blast', '10:00 -45, 10:02 4', ['too-cold', 'counts']],
    ['a dip and back', '10:00 70.2, 10:01 24.1, 10:02 70.6', ['counts', 'dip', 'counts']],
    ['a slip of the pen upward', '13:00 20.1, 13:05 58.0, 13:10 19.5', ['counts', 'spike', 'counts']],
    ['a fall no core can follow', '10:00 47, 10:01 4', ['counts', 'jump']],
    [
      'a time that goes back',
      '10:00 70, 10:02 70.5, 09:50 70.6, 10:04 70.8',
      ['clock-back', 'counts', 'counts', 'counts'],
    ],
    ['noise', '10:00 70.2, 10:01 69.9, 10:02 70.3', ['counts', 'counts', 'counts']],
    [
      'a thin sausage in ice',
      '10:00 72, 10:02 50, 10:04 34, 10:08 18, 10:12 9',
      Array.from({ length: 5 }, () => 'counts'),
    ],
    ['a blank', '10:00 70, 10:01 , 10:02 71', ['counts', 'unreadable', 'counts']],
    ['words', '10:00 70, 10:01 err, 10:02 71', ['counts', 'unreadable', 'counts']],
  ])('marks %s', (_, text, expected) => {
    expect(states(log(text))).toEqual(expected);
  });

  it('marks a core hotter than anything around it', () => {
    expect(states(log('10:00 72, 10:05 84'), 78)).toEqual(['counts', 'above-medium']);
    expect(states(log('10:00 72, 10:05 82.9'), 78)).toEqual(['counts', 'counts']);
  });

  it('suspects the unit after two figures no core can show, not after one', () => {
    expect(checkLog(log('10:00 155, 10:05 156')).unitSuspect).toBe(true);
    expect(checkLog(log('10:00 155, 10:05 70')).unitSuspect).toBe(false);
  });

  it('lets only a reason with initials take a reading out', () => {
    const given = log('10:00 70, 10:01 24, 10:02 71');
    const withMark = (reason: string, initials: string) => ({
      ...given,
      readings: given.readings.map((reading, index) =>
        index === 1 ? { ...reading, excluded: { reason, initials, at: at('11:00') } } : reading,
      ),
    });
    expect(states(withMark('fell out', 'AB'))).toEqual(['counts', 'excluded', 'counts']);
    expect(states(withMark('', 'AB'))).toEqual(['counts', 'dip', 'counts']);
    expect(checkLog(withMark('fell out', ' ')).readings[1]?.exclusionIncomplete).toBe(true);
  });

  it('keeps a reading without a time where it was written, unreadable', () => {
    const given = log('10:00 70, 10:01 71, 10:02 72');
    const [, second] = given.readings;
    const broken = given.readings.map((reading) =>
      reading === second ? { ...reading, at: 'soon' } : reading,
    );
    expect(
      checkLog({ ...given, readings: broken }).readings.map((reading) => [reading.id, reading.state]),
    ).toEqual([
      ['r0', 'counts'],
      ['r1', 'unreadable'],
      ['r2', 'counts'],
    ]);
  });

  it('tells a reading typed in more than 15 min later', () => {
    const given = log('10:00 70, 10:01 71');
    const entered = given.readings.map((reading) => ({ ...reading, enteredAt: at('10:16') }));
    expect(
      checkLog({ ...given, readings: entered }).readings.map((reading) => reading.enteredLateMin),
    ).toEqual([16, null]);
  });
});

describe('hottestMediumC', () => {
  it('is the hottest medium of the heating steps, unknown as soon as one names none', () => {
    const bath = { ...newStep('a', 'cook'), medium: enteredEntry('78', 'C'), oven: enteredEntry('212', 'F') };
    const bare = newStep('b', 'smoke');
    expect(hottestMediumC([bath, newStep('c', 'chill')])).toBe(100);
    expect(hottestMediumC([bare, bath])).toBeNull();
    expect(hottestMediumC([])).toBeNull();
  });
});

describe('worstOf', () => {
  it('lets a fail rule over "cannot tell", and that over a pass', () => {
    const [pass, unknown, fail] = [{ state: 'pass' }, { state: 'cannot-tell' }, { state: 'fail' }] as const;
    expect(worstOf([pass, unknown, fail])).toBe(fail);
    expect(worstOf([pass, unknown])).toBe(unknown);
    expect(worstOf([pass])).toBe(pass);
    expect(worstOf([])).toBeUndefined();
  });
});

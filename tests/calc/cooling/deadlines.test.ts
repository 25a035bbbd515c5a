import { newBatch, newProbeLog, newReading, newStep } from '@larderwright/calc/batch';
import { coolDeadlines, coolStage } from '@larderwright/calc/cooling';
import type { ProcessSlice, ProcessStep } from '@larderwright/calc/process';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';

const at = (clock: string) => `2026-11-27T${clock}:00+00:00`;
const ms = (clock: string) => Date.parse(at(clock));
const cook = (endedAt: string | null): ProcessStep => ({
  ...newStep('cook', 'cook'),
  startedAt: at('10:00'),
  endedAt: endedAt && at(endedAt),
});
const chill = (endedAt: string | null = null): ProcessStep => ({
  ...newStep('chill', 'chill'),
  startedAt: at('12:10'),
  endedAt: endedAt && at(endedAt),
});

/** A cook out of the heat at 12:00 with readings of a probe checked right, ± 0.5 °C. Invented. */
function process(
  readings: readonly [string, number][],
  steps: ProcessStep[] = [cook('12:00'), chill()],
  ruleSet = 'us-food-code',
): ProcessSlice {
  const log = {
    ...newProbeLog('p', null),
    offset: enteredEntry('0', 'dC'),
    error: enteredEntry('0.5', 'dC'),
    readings: readings.map(([clock, tempC], i) => newReading(`r${i}`, at(clock), String(tempC), 'C', null)),
  };
  const { process: blank } = newBatch({ id: 'b', at: at('09:00'), zone: 'UTC' });
  return { ...blank, coolRuleSetId: ruleSet, steps, logs: readings.length === 0 ? [] : [log] };
}

const clocks = (slice: ProcessSlice) =>
  coolDeadlines(coolStage({ process: slice }).values, slice).map(({ leg, startMs, latestMs, state }) => [
    leg?.id ?? 'chill-start',
    startMs,
    latestMs,
    state,
  ]);

describe('the clocks of a cooling rule', () => {
  // FDA Food Code 2022, 3-501.14(A): 57 °C to 21 °C within 2 hours, and within a total of 6 hours to 5 °C.
  it('run from the last reading surely above the start, on the pessimistic side', () => {
    expect(
      clocks(
        process([
          ['12:00', 70],
          ['12:20', 58],
          ['12:30', 55],
        ]),
      ),
    ).toEqual([
      ['135F-70F', ms('12:20'), ms('14:20'), 'runs'],
      ['135F-41F', ms('12:20'), ms('18:20'), 'runs'],
    ]);
  });

  it('may run since the last reading above, while none shows that the core has left', () => {
    expect(
      clocks(
        process([
          ['12:00', 70],
          ['12:20', 62],
        ]),
      ),
    ).toEqual([
      ['135F-70F', ms('12:20'), ms('14:20'), 'may-run'],
      ['135F-41F', ms('12:20'), ms('18:20'), 'may-run'],
    ]);
  });

  it('may run since the end of the heat where nobody has read the core, or there is no probe', () => {
    const unread = [
      ['135F-70F', ms('12:00'), ms('14:00'), 'may-run'],
      ['135F-41F', ms('12:00'), ms('18:00'), 'may-run'],
    ];
    expect(clocks(process([]))).toEqual(unread);
    expect(clocks(process([['11:50', 74]]))).toEqual(unread);
  });

  it('stop for a leg that is shown to be met, and for one that is missed', () => {
    expect(
      clocks(
        process([
          ['12:00', 70],
          ['12:20', 58],
          ['12:40', 50],
          ['13:30', 20],
        ]),
      ),
    ).toEqual([['135F-41F', ms('12:20'), ms('18:20'), 'runs']]);
    expect(
      clocks(
        process([
          ['12:00', 70],
          ['12:20', 58],
          ['12:30', 55],
          ['14:40', 40],
        ]),
      ),
    ).toEqual([['135F-41F', ms('12:20'), ms('18:20'), 'runs']]);
  });

  it('stop when the chill is over, and never begin while the heat is on', () => {
    expect(clocks(process([['12:00', 70]], [cook('12:00'), chill('13:00')]))).toEqual([]);
    expect(clocks(process([['11:50', 70]], [cook(null)]))).toEqual([]);
  });

  // FSIS Stabilization Guideline (Revised Appendix B, December 2021), option 2: chilling begins within 90 minutes.
  it('count down to the chill itself where the rule says how soon it must begin', () => {
    expect(clocks(process([['12:00', 70]], [cook('12:00')], 'us-fsis-2'))[0]).toEqual([
      '120F-80F',
      ms('12:00'),
      ms('13:00'),
      'may-run',
    ]);
    expect(clocks(process([['12:00', 70]], [cook('12:00')], 'us-fsis-2'))[1]).toEqual([
      'chill-start',
      ms('12:00'),
      ms('13:30'),
      'runs',
    ]);
  });
});

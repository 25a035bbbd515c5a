import { newProbeLog, newReading, newStep } from '@larderwright/calc/batch';
import { type CookFacts, cookStage, UNKNOWN_FACTS } from '@larderwright/calc/lethality';
import type { ProcessSlice } from '@larderwright/calc/process';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';
import { at, inventedProcess } from '../../fixtures/invented-processes.ts';

const terrine: CookFacts = {
  ...UNKNOWN_FACTS,
  hasPoultry: false,
  fatFraction: 0.248,
  comminuted: true,
  hasPorkLiver: true,
};
const parfait: CookFacts = {
  ...UNKNOWN_FACTS,
  hasPoultry: true,
  poultryKind: 'other',
  fatFraction: 0.317,
  comminuted: true,
  hasPorkLiver: false,
};
const ham: CookFacts = { ...UNKNOWN_FACTS, hasPoultry: false, comminuted: false, hasPorkLiver: false };

function judge(process: ProcessSlice, facts: CookFacts) {
  const result = cookStage({ process }, facts);
  const [verdict] = result.verdicts;
  const [log] = result.values.logs;
  if (!verdict || !log?.hold)
    return { verdict, log, hold: null, ids: result.findings.map(({ id }) => id), result };
  return { verdict, log, hold: log.hold, ids: result.findings.map(({ id }) => id), result };
}

/** Within a minute, as whole-minute clocks and straight lines allow. */
function expectMinutes(seconds: number | undefined, minutes: number) {
  expect(
    Math.abs((seconds ?? Number.NaN) / 60 - minutes),
    `${seconds} s against ${minutes} min`,
  ).toBeLessThanOrEqual(1);
}

describe('cookStage on the invented country terrine, 71 °C for 20 min', () => {
  const plan = { cookRuleSetId: 'hev-advisory', cookLimitId: 'hev-71C-20min' };

  it('passes on the whole log, 25 min by readings and 29 by straight lines, thanks to logged carry-over', () => {
    const { verdict, hold, log, ids } = judge(inventedProcess('countryTerrine', plan), terrine);
    expect(verdict).toMatchObject({
      state: 'pass',
      reason: 'cook.hold-met',
      mark: 'confirmed',
      basis: 'hev-barnaud-2012',
    });
    expect(hold).toMatchObject({ actionC: 71.5, countedS: 25 * 60, peakC: 73.1 });
    expectMinutes(hold?.interpolatedS, 29);
    expect(hold?.run).toMatchObject({ startMs: Date.parse(at('11:20')), endMs: Date.parse(at('11:45')) });
    expect(ids).toContain('cook.carry-over');
    // pasteurisation value to the end of the bath about 28 min: information only
    expectMinutes((log?.atHeatEnd.trapezoidMin ?? 0) * 60, 28);
  });

  it('has nothing to show when it leaves the bath, and says to keep the probe in at 11:30', () => {
    const atBath = judge(inventedProcess('countryTerrine', { ...plan, until: '11:20' }), terrine);
    expect(atBath.verdict?.state).not.toBe('pass');
    expect(atBath.hold?.countedS).toBe(0);
    const atIce = judge(inventedProcess('countryTerrine', { ...plan, until: '11:30' }), terrine);
    expect(atIce.verdict).toMatchObject({ state: 'fail', reason: 'cook.hold-short' });
    expect(atIce.hold).toMatchObject({ countedS: 600, remainingS: 600 });
    expect(atIce.ids).toContain('cook.keep-probe-in');
  });

  it('cannot tell without a probe error', () => {
    expect(judge(inventedProcess('countryTerrine', { ...plan, error: '' }), terrine).verdict).toMatchObject({
      state: 'cannot-tell',
      reason: 'cook.error-unknown',
    });
  });

  it('names the pork liver when a milder limit is chosen, and says whether 71 °C for 20 min was met', () => {
    const uk = { cookRuleSetId: 'uk-advice', cookLimitId: 'uk-70C-2min' };
    expect(judge(inventedProcess('countryTerrine', uk), terrine).ids).toContain('cook.pork-liver-met');
    expect(judge(inventedProcess('countryTerrine', { ...uk, until: '11:30' }), terrine).ids).toContain(
      'cook.pork-liver',
    );
  });
});

describe('cookStage on the invented liver parfait, 70 °C for 3 min', () => {
  const plan = { cookRuleSetId: 'nz-card', cookLimitId: 'nz-70C-3min' };

  it('fails at the planned time', () => {
    const { verdict, hold, log } = judge(
      inventedProcess('liverParfait', { ...plan, until: '14:30', cookEnded: '14:30' }),
      parfait,
    );
    expect(verdict).toMatchObject({ state: 'fail', reason: 'cook.never-reached' });
    expect(hold).toMatchObject({ countedS: 0, peakC: 63.5 });
    // pasteurisation value 1.33 of 2 min by trapezoids from 60 °C up
    expect(log?.atHeatEnd.trapezoidMin).toBeCloseTo(1.33, 2);
  });

  it('cannot tell while the steam is on', () => {
    const { verdict, hold } = judge(
      inventedProcess('liverParfait', { ...plan, until: '15:18', cookEnded: null }),
      parfait,
    );
    expect(verdict).toMatchObject({ state: 'cannot-tell', reason: 'cook.open' });
    expect(hold).toMatchObject({ countedS: 120, remainingS: 60 });
  });

  it('passes at 15:20 on readings, not on the line at 15:18', () => {
    const { verdict, hold } = judge(
      inventedProcess('liverParfait', { ...plan, until: '15:20', cookEnded: '15:20' }),
      parfait,
    );
    expect(verdict?.state).toBe('pass');
    expect(hold?.countedS).toBe(240);
    expect(hold?.firstReachedMs).toBe(Date.parse(at('15:16')));
    const whole = judge(inventedProcess('liverParfait', plan), parfait);
    expect(whole.verdict?.state).toBe('pass');
    expectMinutes((whole.log?.atHeatEnd.trapezoidMin ?? 0) * 60, 36);
  });

  it('notes the other pair of the card met at 14:55, and does not pass on it', () => {
    const { verdict, ids } = judge(
      inventedProcess('liverParfait', { ...plan, until: '14:55', cookEnded: '14:55' }),
      parfait,
    );
    expect(verdict?.state).toBe('fail');
    expect(ids).toContain('cook.other-pair-met');
  });

  it('fails under a limit for meat without poultry, whatever the readings', () => {
    for (const [cookRuleSetId, cookLimitId] of [
      ['us-food-code', 'fc-155F'],
      ['us-fsis-meat-6.5', 'fsis-155F'],
    ] as const) {
      const { verdict, ids } = judge(
        inventedProcess('liverParfait', { cookRuleSetId, cookLimitId }),
        parfait,
      );
      expect(verdict).toMatchObject({ state: 'fail', reason: 'cook.limit-not-for-poultry' });
      expect(ids).toContain('cook.poultry-under-meat-limit');
    }
  });

  it('finds no poultry column for its fat', () => {
    const plan12 = { cookRuleSetId: 'us-fsis-poultry', cookLimitId: 'fsis-poultry-158F' };
    expect(judge(inventedProcess('liverParfait', plan12), parfait).verdict).toMatchObject({
      state: 'cannot-tell',
      reason: 'cook.fat-off-table',
    });
  });
});

describe('cookStage on the other invented batches', () => {
  it('passes the pâté en croûte at 74 °C on logged carry-over only', () => {
    const plan = { cookRuleSetId: 'us-food-code', cookLimitId: 'fc-165F' };
    const pie: CookFacts = {
      ...UNKNOWN_FACTS,
      hasPoultry: true,
      fatFraction: 0.239,
      comminuted: true,
      hasPorkLiver: false,
    };
    const { verdict, hold } = judge(inventedProcess('pateEnCroute', plan), pie);
    expect(verdict?.state).toBe('pass');
    expect(hold?.peakC).toBe(75.4);
    // indicated 74.5 °C or more from 11:35 to 11:59 by straight lines
    expectMinutes(hold?.interpolatedS, 24);
    expect(judge(inventedProcess('pateEnCroute', { ...plan, until: '11:12' }), pie).verdict?.state).toBe(
      'fail',
    );
  });

  it('passes the mutton ham at 68.3 °C for 22 s after correction: 33 min by lines, 10 by readings', () => {
    const plan = { cookRuleSetId: 'us-fsis-meat-6.5', cookLimitId: 'fsis-155F' };
    const { verdict, hold, ids } = judge(inventedProcess('muttonHam', plan), ham);
    expect(verdict?.state).toBe('pass');
    expect(hold?.countedS).toBe(600);
    expect(hold?.peakC).toBeCloseTo(69.9, 9);
    expectMinutes(hold?.interpolatedS, 33);
    expect(ids).toContain('cook.gap-at-limit');
  });

  it('fails the mutton ham at 70 °C for 2 min after correction, though the raw log looks like a pass', () => {
    const plan = { cookRuleSetId: 'uk-advice', cookLimitId: 'uk-70C-2min' };
    expect(judge(inventedProcess('muttonHam', plan), ham).verdict).toMatchObject({
      state: 'fail',
      reason: 'cook.never-reached',
    });
    expectMinutes(judge(inventedProcess('muttonHam', { ...plan, offset: '0' }), ham).hold?.interpolatedS, 11);
  });

  it('passes the trout mousseline at 70 °C for 2 min: 6 min by readings, 9 by lines, all carry-over', () => {
    const plan = { cookRuleSetId: 'uk-advice', cookLimitId: 'uk-70C-2min' };
    const fish: CookFacts = { ...UNKNOWN_FACTS, hasPoultry: false, comminuted: true, hasPorkLiver: false };
    const { verdict, hold, ids } = judge(inventedProcess('troutMousseline', plan), fish);
    expect(verdict?.state).toBe('pass');
    expect(hold?.countedS).toBe(360);
    expectMinutes(hold?.interpolatedS, 9);
    expect(ids).toContain('cook.carry-over');
    expect(judge(inventedProcess('troutMousseline', { ...plan, until: '15:17' }), fish).verdict?.state).toBe(
      'fail',
    );
  });
});

describe('cookStage, what is missing', () => {
  it('cannot tell without a rule set, a limit, a log or a known species', () => {
    const process = inventedProcess('countryTerrine');
    const reasonOf = (given: ProcessSlice, facts = terrine) =>
      cookStage({ process: given }, facts).verdicts[0];
    expect(reasonOf(process)).toMatchObject({ state: 'cannot-tell', reason: 'cook.no-rule-set' });
    expect(reasonOf({ ...process, cookRuleSetId: 'gone' })?.reason).toBe('cook.rule-set-unknown');
    expect(reasonOf({ ...process, cookRuleSetId: 'uk-advice' })?.reason).toBe('cook.no-limit');
    expect(reasonOf({ ...process, cookRuleSetId: 'uk-advice', cookLimitId: 'gone' })?.reason).toBe(
      'cook.limit-unknown',
    );
    const named = { ...process, cookRuleSetId: 'uk-advice', cookLimitId: 'uk-70C-2min' };
    expect(reasonOf({ ...named, logs: [] })).toMatchObject({ state: 'cannot-tell', reason: 'cook.no-log' });
    expect(reasonOf({ ...named, logs: [newProbeLog('empty', null)] })?.reason).toBe('cook.no-readings');
    const retail = { ...process, cookRuleSetId: 'us-food-code', cookLimitId: 'fc-155F' };
    expect(reasonOf(retail, UNKNOWN_FACTS)).toMatchObject({
      state: 'cannot-tell',
      reason: 'cook.species-unknown',
    });
  });

  it('lists what is missing by its field', () => {
    const process = {
      ...inventedProcess('countryTerrine', { error: '', offset: '' }),
      cookRuleSetId: 'uk-advice',
    };
    expect(cookStage({ process }, UNKNOWN_FACTS).missing.map(({ field }) => field)).toEqual([
      'process.cookLimitId',
      'formula.lines',
      'process.logs.probe.offset',
      'process.logs.probe.error',
    ]);
  });

  it('lets the worst of several logs rule', () => {
    const process = inventedProcess('countryTerrine', {
      cookRuleSetId: 'uk-advice',
      cookLimitId: 'uk-70C-2min',
    });
    const [log] = process.logs;
    if (!log) throw new Error('no log');
    const cold = { ...log, id: 'corner', name: 'Corner', readings: log.readings.slice(0, 12) };
    const { verdicts } = cookStage({ process: { ...process, logs: [log, cold] } }, terrine);
    expect(verdicts[0]).toMatchObject({ state: 'fail', subjectId: 'corner' });
    const silent = { ...newProbeLog('silent', null), name: 'Silent' };
    expect(cookStage({ process: { ...process, logs: [log, silent] } }, terrine).verdicts[0]).toMatchObject({
      state: 'cannot-tell',
      subjectId: 'silent',
    });
  });

  it('flags a slow come-up, a reading that cannot be and one outside the steps, and leaves the verdict to the readings', () => {
    const texts: [string, string][] = [
      ['05:00', '5'],
      ['08:40', '9'],
      ['12:00', '40'],
      ['15:00', '60'],
      ['15:05', '155'],
      ['15:20', '71'],
      ['15:25', '71.2'],
      ['15:30', '71.4'],
    ];
    const readings = texts.map(([clock, figure]) => newReading(clock, at(clock), figure, 'C', null));
    const log = {
      ...newProbeLog('slow', null),
      offset: enteredEntry('0', 'dC'),
      error: enteredEntry('0.5', 'dC'),
      readings,
    };
    const cook = { ...newStep('cook', 'cook'), startedAt: at('08:30'), endedAt: at('15:30') };
    const process = {
      cookRuleSetId: 'uk-advice',
      cookLimitId: 'uk-70C-2min',
      coolRuleSetId: null,
      steps: [cook],
      logs: [log],
    };
    const { verdicts, findings } = cookStage({ process }, ham);
    expect(verdicts[0]?.state).toBe('pass');
    expect(findings.map(({ id }) => id).sort()).toEqual([
      'cook.come-up-slow',
      'cook.gap-at-limit',
      'cook.gap-long',
      'cook.gap-long',
      'cook.outside-steps',
      'cook.reading-cannot-be',
    ]);
  });

  it('leaves out what a person excluded with reason and initials, and nothing else', () => {
    const process = inventedProcess('troutMousseline', {
      cookRuleSetId: 'uk-advice',
      cookLimitId: 'uk-70C-2min',
    });
    const [log] = process.logs;
    if (!log) throw new Error('no log');
    const slipped = newReading('slip', at('15:25'), '31', 'C', null);
    const place = log.readings.findIndex((reading) => reading.at === at('15:29'));
    const withSlip = (excluded: typeof slipped.excluded) => {
      const readings = [
        ...log.readings.slice(0, place),
        { ...slipped, excluded },
        ...log.readings.slice(place),
      ];
      return judge({ ...process, logs: [{ ...log, readings }] }, ham).verdict;
    };
    expect(withSlip(null)).toMatchObject({ state: 'cannot-tell', reason: 'cook.hold-not-shown' });
    expect(withSlip({ reason: 'slipped', initials: '', at: at('16:00') })?.state).toBe('cannot-tell');
    expect(withSlip({ reason: 'slipped', initials: 'LQ', at: at('16:00') })?.state).toBe('pass');
  });

  it('does not let a reheat stand in for the cook', () => {
    const figures: [string, string][] = [
      ['10:00', '60'],
      ['10:15', '64'],
      ['12:00', '4'],
      ['13:00', '40'],
      ['13:15', '72'],
      ['13:20', '73'],
    ];
    const readings = figures.map(([clock, figure]) => newReading(clock, at(clock), figure, 'C', null));
    const log = {
      ...newProbeLog('log', null),
      offset: enteredEntry('0', 'dC'),
      error: enteredEntry('0.5', 'dC'),
      readings,
    };
    const step = (kind: 'cook' | 'chill' | 'reheat', start: string, end: string) => ({
      ...newStep(kind, kind),
      startedAt: at(start),
      endedAt: at(end),
    });
    const steps = [
      step('cook', '09:30', '10:15'),
      step('chill', '10:20', '12:30'),
      step('reheat', '12:45', '13:25'),
    ];
    const process = {
      cookRuleSetId: 'uk-advice',
      cookLimitId: 'uk-70C-2min',
      coolRuleSetId: null,
      steps,
      logs: [log],
    };
    const { verdict, ids } = judge(process, ham);
    expect(verdict?.state).toBe('fail');
    expect(ids).toContain('cook.reheat-not-judged');
  });
});

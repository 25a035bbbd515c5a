import { newProbeLog, newReading, newStep } from '@larderwright/calc/batch';
import {
  COOL_RULE_SETS,
  type CoolFacts,
  coolAcrossRuleSets,
  coolFacts,
  coolStage,
  curedState,
  UNKNOWN_COOL_FACTS,
} from '@larderwright/calc/cooling';
import type { ProcessSlice } from '@larderwright/calc/process';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';
import { at, inventedProcess } from '../../fixtures/invented-processes.ts';

/** Facts of the invented mutton ham: 120 mg/kg nitrite, 361 mg/kg erythorbate, 2.87 % salt on water. */
const ham: CoolFacts = {
  nitritePpm: 116,
  acceleratorPpm: 361,
  saltOnWaterFraction: 0.0287,
  waterActivity: null,
  liverFraction: 0,
};

type Name = Parameters<typeof inventedProcess>[0];

function legs(
  name: Name,
  coolRuleSetId: string,
  facts = UNKNOWN_COOL_FACTS,
  changes: Parameters<typeof inventedProcess>[1] = {},
) {
  const result = coolStage({ process: inventedProcess(name, { ...changes, coolRuleSetId }) }, facts);
  const judged = result.values.coolings[0]?.logs[0]?.legs ?? [];
  return {
    result,
    states: result.verdicts.map(({ state }) => state),
    reasons: result.verdicts.map(({ reason }) => reason),
    worstMin: judged.map((leg) => leg.judged.worstMin),
    lineMin: judged.map((leg) => leg.judged.lines?.elapsedMin ?? null),
    lineStates: judged.map((leg) => leg.judged.lines?.state ?? null),
    ids: result.findings.map(({ id }) => id),
  };
}

/** Straight lines through whole-minute readings agree to a minute. */
function expectMinutes(minutes: readonly (number | null)[], wanted: readonly number[]) {
  expect(minutes.length).toBe(wanted.length);
  for (const [index, value] of minutes.entries())
    expect(
      Math.abs((value ?? Number.NaN) - (wanted[index] ?? 0)),
      `${value} against ${wanted[index]}`,
    ).toBeLessThanOrEqual(1);
}

// The invented batches: times by straight lines as written with them, ± 1 min; verdicts by readings worked by hand.
describe('coolStage on the invented country terrine', () => {
  it('meets the large-meat maximum by lines; by readings with ± 0.5 °C the last leg is too close to tell', () => {
    const { lineMin, lineStates, states, reasons, worstMin, ids } = legs(
      'countryTerrine',
      'uk-large-uncured',
    );
    // 58 min, 1 h 40, 1 h 14
    expectMinutes(lineMin, [58, 100, 74]);
    expect(lineStates).toEqual(['pass', 'pass', 'pass']);
    // 11:20–12:30, 12:15–14:15, 13:45–15:45
    expect(worstMin).toEqual([70, 120, 120]);
    expect(states).toEqual(['pass', 'pass', 'cannot-tell']);
    expect(reasons).toEqual(['cool.leg-met', 'cool.leg-met', 'cool.too-close']);
    expect(ids).toContain('cool.good-practice-missed');
    expect(ids).toContain('cool.log-more-often');
  });

  it('passes the large-meat maximum outright with a probe error of 0', () => {
    const { states, worstMin } = legs('countryTerrine', 'uk-large-uncured', UNKNOWN_COOL_FACTS, {
      error: '0',
    });
    // 13:45 (14.1) to 15:15 (4.9): 90 of 90 min
    expect(worstMin[2]).toBe(90);
    expect(states).toEqual(['pass', 'pass', 'pass']);
  });

  it('passes the Food Code', () => {
    const { lineMin, states, worstMin } = legs('countryTerrine', 'us-food-code');
    expectMinutes(lineMin, [68, 184]);
    expect(worstMin).toEqual([90, 225]);
    expect(states).toEqual(['pass', 'pass']);
  });

  it('misses the French two hours by lines; quarter-hour readings do not prove it', () => {
    const { lineMin, lineStates, states, reasons } = legs('countryTerrine', 'fr-catering');
    expectMinutes(lineMin, [132]);
    expect(lineStates).toEqual(['fail']);
    expect(states).toEqual(['cannot-tell']);
    expect(reasons).toEqual(['cool.too-close']);
  });

  it('cannot tell without a probe error', () => {
    const { states, reasons } = legs('countryTerrine', 'us-food-code', UNKNOWN_COOL_FACTS, { error: '' });
    expect(states).toEqual(['cannot-tell', 'cannot-tell']);
    expect(reasons).toEqual(['cool.error-unknown', 'cool.error-unknown']);
  });

  it('may not use the cured table: 88 mg/kg on the product, though 121 on the meat', () => {
    const facts = coolFacts({
      cured: {
        ingoingPpmMeat: 120.5,
        ingoingPpmTotal: 87.7,
        saltOnWaterFraction: 0.0296,
        saltOnWaterMinFraction: 0.0296,
        acceleratorPpmMeat: 0,
        acceleratorPpmTotal: 0,
        liverFraction: 0.0857,
      },
    });
    expect(facts.nitritePpm).toBe(87.7);
    const { states, reasons } = legs('countryTerrine', 'uk-large-cured', facts);
    expect(states).toEqual(['fail', 'fail', 'fail']);
    expect(new Set(reasons)).toEqual(new Set(['cool.cured-not-met']));
  });
});

describe('coolStage on the other invented batches', () => {
  it('passes the parfait: 60 to 21 °C in 1 h 04, 21 to 5 °C in 1 h 35 by lines', () => {
    const { lineMin, states, worstMin } = legs('liverParfait', 'au-nz-3.2.2');
    expectMinutes(lineMin, [64, 95]);
    // 15:49 (60.5 may be 60.0) to 17:19; 17:04 to 19:04
    expect(worstMin).toEqual([90, 120]);
    expect(states).toEqual(['pass', 'pass']);
  });

  it('fails both legs of the pâté en croûte, the night gap not bridged', () => {
    const { lineMin, states, reasons } = legs('pateEnCroute', 'us-food-code');
    expectMinutes(lineMin.slice(0, 1), [240]);
    // 12.5 °C at 19:50, six hours and more after 57 °C: a miss. When 5 °C was reached nobody saw.
    expect(lineMin[1]).toBeNull();
    expect(states).toEqual(['fail', 'fail']);
    expect(reasons).toEqual(['cool.leg-missed', 'cool.leg-missed']);
  });

  it('sees the pâté en croûte miss at 13:50', () => {
    const process = inventedProcess('pateEnCroute', { coolRuleSetId: 'us-food-code', until: '13:50' });
    const steps = process.steps.map((step) =>
      step.kind === 'chill' ? { ...step, medium: enteredEntry('4', 'C') } : step,
    );
    const { findings, verdicts } = coolStage({ process: { ...process, steps } });
    expect(verdicts.map(({ state }) => state)).toEqual(['cannot-tell', 'cannot-tell']);
    const miss = findings.find(({ id, params }) => id === 'cool.will-miss' && params.maxMin === 120);
    expect(miss).toMatchObject({ severity: 'stop', caution: 'cooling-clock' });
    // latest start 13:10: deadline 15:10; expected about 17:20
    expect(String(miss?.params.deadlineAt)).toContain('T15:10');
    expect(String(miss?.params.expectedAt)).toMatch(/T17:[12]\d/);
  });

  it('passes the mutton ham by the cured option, by lines 1 h 37 and 2 h 42', () => {
    const { lineMin, states } = legs('muttonHam', 'us-fsis-3-cured', ham);
    expectMinutes(lineMin, [97, 162]);
    expect(states).toEqual(['pass', 'pass']);
  });

  it('misses the uncured option and the Food Code by lines; 20 min between readings do not prove it', () => {
    const uncured = legs('muttonHam', 'us-fsis-1', ham);
    expectMinutes(uncured.lineMin.slice(0, 1), [97]);
    expect(uncured.lineStates[0]).toBe('fail');
    expect(uncured.states[0]).toBe('cannot-tell');
    const retail = legs('muttonHam', 'us-food-code', ham);
    expectMinutes(retail.lineMin.slice(0, 1), [134]);
    expect(retail.lineStates[0]).toBe('fail');
    expect(retail.states[0]).toBe('cannot-tell');
  });

  it('passes the mutton ham by the cured large-meat table at its maximum: 71 min, 3 h 13, 1 h 34 by lines', () => {
    const { lineMin, states, ids } = legs('muttonHam', 'uk-large-cured', ham);
    expectMinutes(lineMin, [71, 193, 94]);
    expect(states).toEqual(['pass', 'pass', 'cannot-tell']);
    expect(ids).toContain('cool.good-practice-missed');
  });

  it('passes the trout mousseline: 63 to 10 °C in 1 h 08, Food Code 35 min and 1 h 36 by lines', () => {
    const france = legs('troutMousseline', 'fr-catering');
    expectMinutes(france.lineMin, [68]);
    expect(france.states).toEqual(['pass']);
    const retail = legs('troutMousseline', 'us-food-code');
    expectMinutes(retail.lineMin, [35, 96]);
    expect(retail.states).toEqual(['pass', 'pass']);
  });

  it('shows one log under every rule set, none of them blended', () => {
    const process = inventedProcess('troutMousseline');
    const across = coolAcrossRuleSets({ process }, UNKNOWN_COOL_FACTS);
    expect(across.map(({ ruleSetId }) => ruleSetId)).toEqual(COOL_RULE_SETS.map(({ id }) => id));
    const stateOf = (id: string) => across.find(({ ruleSetId }) => ruleSetId === id)?.state;
    expect([stateOf('fr-catering'), stateOf('us-food-code'), stateOf('us-fsis-3-cured')]).toEqual([
      'pass',
      'pass',
      'cannot-tell',
    ]);
  });
});

describe('curedState', () => {
  const fsis = [{ nitritePpm: 100, acceleratorPpm: 250 }];
  const slow = [
    { nitritePpm: 120, saltOnWaterFraction: 0.035 },
    { nitritePpm: 40, saltOnWaterFraction: 0.06 },
    { waterActivityMax: 0.92 },
  ];

  it('needs every figure of one way, and knows when one is missing', () => {
    // FSIS: 100 ppm nitrite and 250 ppm erythorbate; trials: nitrite alone is not enough
    expect(curedState(fsis, ham)).toBe('met');
    expect(curedState(fsis, { ...ham, acceleratorPpm: 0 })).toBe('not-met');
    expect(curedState(fsis, { ...ham, acceleratorPpm: null })).toBe('unknown');
    expect(curedState(fsis, { ...ham, nitritePpm: 99.9 })).toBe('not-met');
    expect(curedState(fsis, UNKNOWN_COOL_FACTS)).toBe('unknown');
  });

  it('takes any one of the ways of slow cooling', () => {
    // California 3 CCR 910.15
    expect(curedState(slow, { ...ham, nitritePpm: 120, saltOnWaterFraction: 0.035 })).toBe('met');
    expect(curedState(slow, { ...ham, nitritePpm: 40, saltOnWaterFraction: 0.06 })).toBe('met');
    expect(curedState(slow, { ...ham, nitritePpm: 0, waterActivity: 0.92 })).toBe('met');
    expect(curedState(slow, { ...ham, nitritePpm: 0, waterActivity: 0.93 })).toBe('not-met');
    expect(curedState(slow, { ...ham, nitritePpm: 0 })).toBe('unknown');
  });

  it('does not trust nitrite beside much liver', () => {
    // common practice, no source: over 15 % liver the nitrite cannot be assumed to last
    expect(curedState(fsis, { ...ham, liverFraction: 0.16 })).toBe('liver');
    expect(curedState(fsis, { ...ham, liverFraction: 0.15 })).toBe('met');
    expect(curedState(fsis, { ...ham, liverFraction: null })).toBe('unknown');
  });
});

describe('coolStage, what is missing or in the way', () => {
  const base = inventedProcess('countryTerrine', { coolRuleSetId: 'us-food-code' });
  const reasonsOf = (process: ProcessSlice, facts = UNKNOWN_COOL_FACTS) =>
    coolStage({ process }, facts).verdicts.map(({ state, reason }) => [state, reason]);

  it('cannot tell without a rule set, a log or readings', () => {
    expect(reasonsOf({ ...base, coolRuleSetId: null })).toEqual([['cannot-tell', 'cool.no-rule-set']]);
    expect(reasonsOf({ ...base, coolRuleSetId: 'gone' })).toEqual([['cannot-tell', 'cool.rule-set-unknown']]);
    expect(reasonsOf({ ...base, logs: [] })).toEqual(
      Array.from({ length: 2 }, () => ['cannot-tell', 'cool.no-log']),
    );
    expect(reasonsOf({ ...base, logs: [newProbeLog('empty', null)] })[0]).toEqual([
      'cannot-tell',
      'cool.no-readings',
    ]);
  });

  it('needs the end of the cook where a leg starts there', () => {
    const steps = base.steps.map((step) => (step.kind === 'cook' ? { ...step, endedAt: null } : step));
    const process = { ...base, steps, coolRuleSetId: 'uk-large-uncured' };
    expect(reasonsOf(process)[0]).toEqual(['cannot-tell', 'cool.cook-end-unknown']);
    expect(coolStage({ process }).missing.map(({ field }) => field)).toEqual(['process.steps.cook.endedAt']);
  });

  it('finds the same Food Code verdict from the peak when nobody wrote the steps down', () => {
    expect(reasonsOf({ ...base, steps: [] }).map(([state]) => state)).toEqual(['pass', 'pass']);
  });

  it('lets the worst log rule each leg', () => {
    const [log] = base.logs;
    if (!log) throw new Error('no log');
    const slow = {
      ...log,
      id: 'middle',
      name: 'Middle loaf',
      readings: log.readings.filter(({ at: when }) => when <= at('13:00')),
    };
    const { verdicts } = coolStage({ process: { ...base, logs: [log, slow] } });
    expect(verdicts.map(({ state, subjectId }) => [state, subjectId])).toEqual([
      ['cannot-tell', 'middle'],
      ['cannot-tell', 'middle'],
    ]);
  });

  it('judges each cooling on its own when a batch is reheated', () => {
    const chill = base.steps.find((step) => step.kind === 'chill');
    if (!chill) throw new Error('no chill');
    const steps = [
      ...base.steps.filter((step) => step.kind === 'cook'),
      { ...chill, endedAt: at('16:45') },
      { ...newStep('reheat', 'reheat'), startedAt: at('17:00'), endedAt: at('17:40') },
      { ...newStep('chill2', 'chill'), startedAt: at('17:40') },
    ];
    const { verdicts } = coolStage({ process: { ...base, steps } });
    expect(verdicts.map(({ id, state }) => [id, state])).toEqual([
      ['cool.leg.135F-70F', 'pass'],
      ['cool.leg.135F-41F', 'pass'],
      ['cool.2.leg.135F-70F', 'cannot-tell'],
      ['cool.2.leg.135F-41F', 'cannot-tell'],
    ]);
  });

  it('asks option 2 for a chill begun within 90 min', () => {
    const process = { ...base, coolRuleSetId: 'us-fsis-2' };
    expect(reasonsOf(process).at(-1)).toEqual(['pass', 'cool.chill-start-met']);
    const late = base.steps.map((step) =>
      step.kind === 'chill' ? { ...step, startedAt: at('12:51') } : step,
    );
    expect(reasonsOf({ ...process, steps: late }).at(-1)).toEqual(['fail', 'cool.chill-start-late']);
    const unknown = base.steps.map((step) => (step.kind === 'chill' ? { ...step, startedAt: null } : step));
    expect(reasonsOf({ ...process, steps: unknown }).at(-1)).toEqual([
      'cannot-tell',
      'cool.chill-start-unknown',
    ]);
  });

  it('asks slow cooling for a fall without a rise', () => {
    const figures: [string, string][] = [
      ['12:00', '60'],
      ['13:00', '45'],
      ['14:00', '30'],
      ['14:30', '34'],
      ['15:30', '20'],
      ['16:30', '10'],
      ['17:30', '3.5'],
    ];
    const readings = figures.map(([clock, figure]) => newReading(clock, at(clock), figure, 'C', null));
    const log = {
      ...newProbeLog('log', null),
      offset: enteredEntry('0', 'dC'),
      error: enteredEntry('0.5', 'dC'),
      readings,
    };
    const cook = { ...newStep('cook', 'cook'), startedAt: at('10:00'), endedAt: at('12:00') };
    const process = { ...base, coolRuleSetId: 'us-slow-20-cured', steps: [cook], logs: [log] };
    const facts = { ...ham, nitritePpm: 130, saltOnWaterFraction: 0.036 };
    const { verdicts, findings } = coolStage({ process }, facts);
    expect(verdicts[0]).toMatchObject({ state: 'cannot-tell', reason: 'cool.not-falling' });
    expect(findings.map(({ id }) => id)).toContain('cool.rewarmed');
    const falling = {
      ...log,
      readings: readings.map((one) =>
        one.id === '14:30' ? newReading('14:30', one.at, '25', 'C', null) : one,
      ),
    };
    expect(coolStage({ process: { ...process, logs: [falling] } }, facts).verdicts[0]).toMatchObject({
      state: 'pass',
    });
  });

  it('leaves storage after the written end of the chill out of the verdict', () => {
    const [log] = base.logs;
    if (!log) throw new Error('no log');
    const warm = newReading('late', '2026-03-11T10:00:00+00:00', '6.5', 'C', null);
    const logs = [{ ...log, readings: [...log.readings, warm] }];
    expect(reasonsOf({ ...base, logs }).map(([state]) => state)).toEqual(['pass', 'fail']);
    const steps = base.steps.map((step) =>
      step.kind === 'chill' ? { ...step, endedAt: at('16:45') } : step,
    );
    expect(reasonsOf({ ...base, logs, steps }).map(([state]) => state)).toEqual(['pass', 'pass']);
  });
});

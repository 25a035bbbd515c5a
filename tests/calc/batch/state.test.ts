import {
  type Batch,
  type BatchState,
  changeState,
  newBatch,
  newProbeLog,
  newReading,
  nextStates,
  recordStage,
  type StateChange,
  stateOf,
} from '@larderwright/calc/batch';
import type { Finding, Verdict } from '@larderwright/calc/findings';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const AT = '2026-11-27T10:00:00+00:00';

function batch(states: readonly BatchState[] = []): Batch {
  const made = newBatch({ id: 'b', at: AT, zone: 'UTC' });
  made.product.batchNo = '20261127-A';
  made.lifecycle = states.map((state, index) => ({ ...step(state), id: String(index) }));
  return made;
}

const step = (state: BatchState, with_: Partial<StateChange> = {}): StateChange => ({
  id: 'new',
  state,
  at: AT,
  by: 'JK',
  second: state === 'released' ? 'Mo' : '',
  why: state === 'held' || state === 'discarded' ? 'Chiller failed' : '',
  ...with_,
});

const verdict = (state: Verdict['state']): Verdict => ({
  id: 'x',
  stage: 'cook',
  state,
  reason: 'x',
  params: {},
  basis: null,
  mark: 'confirmed',
});
const PASSED = { verdicts: [verdict('pass')], findings: [] };
const barsOf = (result: ReturnType<typeof changeState>) => (result.ok ? [] : result.bars.map(({ id }) => id));

describe('the state of a batch', () => {
  it('follows from what was measured while nobody has said it', () => {
    const made = batch();
    expect(stateOf(made)).toEqual({ state: 'planned', change: null });
    const log = newProbeLog('p', null);
    log.readings.push(newReading('r', AT, '7', 'C', AT));
    made.process.logs.push(log);
    expect(stateOf(made)).toEqual({ state: 'in-process', change: null });
    made.lifecycle = [step('planned')];
    expect(stateOf(made).state).toBe('in-process');
  });

  it('is the last one that was said, whatever was measured', () => {
    for (const state of ['held', 'released', 'discarded'] as const)
      expect(stateOf(batch(['in-process', state])).state).toBe(state);
  });

  it('never goes from discarded to released in one step', () => {
    expect(nextStates(batch(['discarded']))).toEqual(['held']);
    expect(barsOf(changeState(batch(['discarded']), step('released'), PASSED))).toContain('no-such-step');
  });
});

describe('a release', () => {
  it('is given with all limits passed, a number and two persons', () => {
    const result = changeState(batch(['in-process']), step('released'), PASSED);
    expect(result).toMatchObject({ ok: true });
    expect(result.ok && stateOf(result.batch)).toMatchObject({ state: 'released', change: { second: 'Mo' } });
  });

  it('is refused while any verdict is fail or cannot tell, whatever else passed', () => {
    const states = fc.array(fc.constantFrom('pass' as const, 'fail' as const, 'cannot-tell' as const), {
      maxLength: 8,
    });
    fc.assert(
      fc.property(states, (all) => {
        const result = changeState(batch(['in-process']), step('released'), {
          verdicts: all.map(verdict),
          findings: [],
        });
        expect(result.ok).toBe(all.length > 0 && all.every((state) => state === 'pass'));
      }),
    );
  });

  it('names every verdict in its way', () => {
    const judged = { verdicts: [verdict('fail'), verdict('pass'), verdict('cannot-tell')], findings: [] };
    expect(barsOf(changeState(batch(['in-process']), step('released'), judged))).toEqual([
      'verdict',
      'verdict',
    ]);
  });

  it('is refused where nothing was judged', () => {
    const nothing = { verdicts: [], findings: [] };
    expect(barsOf(changeState(batch(['in-process']), step('released'), nothing))).toEqual(['nothing-judged']);
  });

  it('is refused while a stop stands, but not for what the record says of its own state', () => {
    const stop = (stage: string): Finding => ({ id: 'x', severity: 'stop', stage, params: {} }) as Finding;
    const held = batch(['held']);
    const change = step('released', { why: 'Probe checked, it was right' });
    expect(barsOf(changeState(held, change, { ...PASSED, findings: [stop('cure')] }))).toEqual(['stop']);
    expect(changeState(held, change, { ...PASSED, findings: [stop('record')] }).ok).toBe(true);
  });

  it.each([
    ['', 'no-second-person'],
    ['  ', 'no-second-person'],
    ['JK', 'second-is-the-first'],
    [' j.k. ', 'second-made-it'],
    ['Ab', 'second-made-it'],
  ] as const)('is refused with "%s" as the second person: %s', (second, bar) => {
    const made = batch(['in-process']);
    made.signOffs = [{ role: 'made', name: second.trim() === 'Ab' ? 'AB' : 'J K', at: AT }];
    expect(barsOf(changeState(made, step('released', { second }), PASSED))).toEqual([bar]);
  });

  it('is refused without a name, without a number, and while a deviation is undecided or holds', () => {
    const made = batch(['in-process']);
    made.product.batchNo = ' ';
    made.deviations = (['', 'hold', 'discard', 'reheat', 'release'] as const).map((decision, index) => ({
      id: String(index),
      at: AT,
      what: 'Lid off',
      decision,
      cause: '',
      prevention: '',
      by: '',
    }));
    const bars = barsOf(changeState(made, step('released', { by: '' }), PASSED));
    expect(bars.toSorted()).toEqual(
      ['deviation-open', 'deviation-open', 'deviation-open', 'no-batch-number', 'nobody-named'].toSorted(),
    );
  });
});

describe('holding and discarding', () => {
  it.each(['held', 'discarded'] as const)('%s needs a name and a reason, and no verdict', (state) => {
    const nothing = { verdicts: [], findings: [] };
    expect(changeState(batch(), step(state), nothing).ok).toBe(true);
    expect(barsOf(changeState(batch(), step(state, { by: '', why: ' ' }), nothing))).toEqual([
      'nobody-named',
      'no-reason',
    ]);
  });

  it('adds to the steps and changes none', () => {
    const before = batch(['in-process']);
    const result = changeState(before, step('held'), PASSED);
    expect(before.lifecycle).toHaveLength(1);
    expect(result.ok && result.batch.lifecycle.slice(0, 1)).toEqual(before.lifecycle);
  });

  it('ends only with a reason', () => {
    expect(barsOf(changeState(batch(['held']), step('in-process'), PASSED))).toEqual(['no-reason']);
  });
});

describe('the record of a batch that is', () => {
  const ids = (made: Batch, verdicts: readonly Verdict[]) =>
    recordStage(made, verdicts).findings.map(({ id, severity }) => `${id}: ${severity}`);

  it('held or discarded says so as a stop', () => {
    expect(ids(batch(['held']), [])).toContain('record.held: stop');
    expect(ids(batch(['discarded']), [])).toContain('record.discarded: stop');
    expect(ids(batch(['held', 'in-process']), [])).not.toContain('record.held: stop');
  });

  it('released says so as a stop when a limit no longer passes', () => {
    const wanted = 'record.release-no-longer-holds: stop';
    expect(ids(batch(['released']), [verdict('pass')])).not.toContain(wanted);
    expect(ids(batch(['released']), [verdict('pass'), verdict('cannot-tell')])).toContain(wanted);
    expect(ids(batch(['released']), [verdict('fail')])).toContain(wanted);
  });

  it('released counts what was changed since, but not where it went', () => {
    const made = batch(['released']);
    const entry = { at: '2026-11-27T11:00:00+00:00', by: '', row: '', from: '', to: 'x', sum: '' };
    made.history = [
      { ...entry, what: 'dispatches.d' },
      { ...entry, what: 'lifecycle.s' },
      { ...entry, what: 'formula.lines.l.actual' },
      { ...entry, what: 'process.logs.p', at: '2026-11-27T09:00:00+00:00' },
    ];
    const finding = recordStage(made, []).findings.find(({ id }) => id === 'record.changed-after-release');
    expect(finding).toMatchObject({ severity: 'caution', params: { count: 1 } });
  });
});

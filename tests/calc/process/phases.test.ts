import { newStep } from '@larderwright/calc/batch';
import {
  inPhase,
  instantMs,
  isoLike,
  type ProcessStep,
  phasesOf,
  type StepKind,
} from '@larderwright/calc/process';
import { describe, expect, it } from 'vitest';

const at = (clock: string) => `2026-03-10T${clock}:00+01:00`;

function step(kind: StepKind, started: string | null, ended: string | null): ProcessStep {
  const times = { startedAt: started && at(started), endedAt: ended && at(ended) };
  return { ...newStep(`${kind}-${started}`, kind), ...times };
}

describe('instantMs', () => {
  it('reads one moment from any zone it is written in', () => {
    expect(instantMs('2026-03-10T11:20:00+01:00')).toBe(Date.UTC(2026, 2, 10, 10, 20));
    expect(instantMs('2026-03-10T10:20Z')).toBe(Date.UTC(2026, 2, 10, 10, 20));
    expect(instantMs('2026-03-10T05:50:30.5-0430')).toBe(Date.UTC(2026, 2, 10, 10, 20, 30, 500));
  });

  it.each([
    null,
    '',
    '2026-03-10T11:20:00',
    '11:20',
    '2026-02-30T11:20Z',
    '2026-13-01T11:20Z',
    '2026-03-10T25:00Z',
    'x',
  ])('finds no moment in %j', (stamp) => {
    expect(instantMs(stamp)).toBeNull();
  });

  it('keeps the hours apart when the clocks go back', () => {
    const before = instantMs('2026-10-25T01:50:00+01:00') ?? 0;
    const after = instantMs('2026-10-25T01:10:00Z') ?? 0;
    expect((after - before) / 60_000).toBe(20);
  });
});

describe('isoLike', () => {
  it.each(['2026-03-10T11:20:00+01:00', '2026-03-10T23:59:59-04:30', '2026-03-10T00:00:00Z'])(
    'gives back %s',
    (stamp) => {
      expect(isoLike(instantMs(stamp) ?? 0, stamp)).toBe(stamp);
    },
  );
});

describe('phasesOf', () => {
  it('is one phase without times when no step is written down', () => {
    const [phase, ...more] = phasesOf([]);
    expect(more).toEqual([]);
    expect(phase).toMatchObject({ kind: 'cook', heatEndMs: null, heatOver: false });
  });

  it('takes a smoke before the cook as part of the cook', () => {
    const steps = [
      step('smoke', '08:00', '09:00'),
      step('cook', '09:00', '11:20'),
      step('chill', '11:30', '16:45'),
    ];
    const phases = phasesOf(steps);
    expect(phases).toHaveLength(1);
    expect(phases[0]).toMatchObject({
      kind: 'cook',
      startMs: instantMs(at('08:00')),
      heatEndMs: instantMs(at('11:20')),
      chillStartMs: instantMs(at('11:30')),
      chillEndMs: instantMs(at('16:45')),
    });
  });

  it('opens a new phase with every heating after a chill', () => {
    const steps = [
      step('cook', '08:00', '10:00'),
      step('chill', '10:00', '12:00'),
      step('reheat', '12:30', '13:30'),
      step('chill', '13:30', null),
    ];
    const phases = phasesOf(steps);
    expect(phases.map((phase) => phase.kind)).toEqual(['cook', 'reheat']);
    const ms = (clock: string) => instantMs(at(clock)) ?? 0;
    expect(inPhase(phases, 0, ms('11:59'))).toBe(true);
    expect(inPhase(phases, 0, ms('12:30'))).toBe(false);
    expect(inPhase(phases, 1, ms('12:30'))).toBe(true);
    expect(inPhase(phases, 0, ms('07:59'))).toBe(false);
    expect(inPhase(phases, 2, ms('12:30'))).toBe(false);
  });

  it('takes heating for over when a chill has begun, without inventing its end', () => {
    const [phase] = phasesOf([step('cook', '08:00', null), step('chill', '10:00', null)]);
    expect(phase).toMatchObject({ heatOver: true, heatEndMs: null });
  });
});

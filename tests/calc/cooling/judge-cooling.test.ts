import { type CoolReading, coolRuleSet, judgeCooling } from '@larderwright/calc/cooling';
import { describe, expect, it } from 'vitest';

const MIN = 60_000;
const minuteOf = (clock: string) => {
  const [hours = 0, minutes = 0] = clock.split(':').map(Number);
  return hours * 60 + minutes;
};

/** `12:00 60, 12:10 4?`: a question mark makes a reading doubtful. */
function log(text: string): CoolReading[] {
  return text.split(',').map((pair) => {
    const [clock = '', figure = ''] = pair.trim().split(' ');
    return { atMs: minuteOf(clock) * MIN, tempC: Number.parseFloat(figure), counts: !figure.endsWith('?') };
  });
}

function judge(text: string, setId: string, heatEnd: string | null, errorC: number | null = 0.5) {
  const heatEndMs = heatEnd === null ? null : minuteOf(heatEnd) * MIN;
  return judgeCooling(log(text), coolRuleSet(setId)?.legs ?? [], {
    errorC,
    offsetKnown: true,
    unitSuspect: false,
    heatEndMs,
  });
}

// Common practice, no source: each worked by hand from the wording of the rule.
describe('judgeCooling, reading by reading', () => {
  it('does not let a doubtful reading end a leg that a later one ends too late', () => {
    // 12:00 to 14:10 is 130 of 120 min; the doubtful 12 °C at 13:59 would make it 119
    const [first] = judge(
      '11:45 70, 12:00 60, 12:15 55, 13:00 36, 13:40 25, 13:59 12?, 14:10 20.2',
      'us-food-code',
      '11:45',
    );
    expect(first).toMatchObject({ state: 'cannot-tell', reason: 'cool.too-close', worstMin: 130 });
  });

  it('does not call a miss what the probe error may explain', () => {
    // at 14:15, two hours after the latest start, 21.4 may be 20.9
    const text = '11:45 70, 12:00 60, 12:15 55, 13:00 36, 13:40 25, 14:15 21.4, 14:30 19';
    expect(judge(text, 'us-food-code', '11:45')[0]).toMatchObject({ state: 'cannot-tell' });
    expect(judge(text, 'us-food-code', '11:45', 0.2)[0]).toMatchObject({
      state: 'fail',
      reason: 'cool.leg-missed',
    });
  });

  it('ends a leg only where the core stays down', () => {
    const text = '11:45 70, 12:00 60, 12:15 52, 12:45 30, 13:00 20.2, 13:15 23, 13:50 21.5, 14:10 20';
    expect(judge(text, 'us-food-code', '11:45')[0]).toMatchObject({ state: 'cannot-tell', worstMin: 130 });
  });

  it('starts the clock after carry-over that climbs out of the heat', () => {
    // 63 °C rule, cook ended at 61.8: it climbs to 65 before it falls
    const text = '11:50 60, 12:00 61.8, 12:15 64.2, 12:30 65, 12:45 60, 13:15 40, 13:45 22, 14:10 9';
    const [leg] = judge(text, 'fr-catering', '12:00');
    expect(leg).toMatchObject({ state: 'pass', worstMin: 100 });
  });

  it('takes no rise for carry-over when the core had already fallen', () => {
    const text = '11:50 70, 12:10 40, 12:20 66, 12:45 60, 13:15 40, 13:45 22, 14:10 9';
    const [leg] = judge(text, 'fr-catering', '12:00');
    expect(leg).toMatchObject({ state: 'cannot-tell', startEarliestMs: minuteOf('12:00') * MIN });
    const [unlogged] = judge(text.replace('11:50 70, ', ''), 'fr-catering', '12:00');
    expect(unlogged?.startEarliestMs).toBe(minuteOf('12:00') * MIN);
  });

  it('holds "less than two hours" to less', () => {
    const text = '11:50 70, 12:00 64, 12:30 50, 13:00 30, 13:30 18, 14:00 9.5';
    expect(judge(text, 'fr-catering', '11:50')[0]).toMatchObject({ state: 'cannot-tell', worstMin: 120 });
    expect(judge(text.replace('14:00', '13:59'), 'fr-catering', '11:50')[0]).toMatchObject({ state: 'pass' });
  });

  it('cannot tell one cooling from two when no end of heating is written down', () => {
    const text = '10:00 60, 11:00 30, 12:00 75, 12:30 50, 13:00 20, 13:30 4';
    expect(judge(text, 'us-food-code', null).map(({ reason }) => reason)).toEqual([
      'cool.cook-end-unknown',
      'cool.cook-end-unknown',
    ]);
  });

  it('has not begun while the core is still above the start', () => {
    expect(judge('12:00 75, 12:15 72, 12:30 70', 'us-food-code', '12:00')[0]).toMatchObject({
      state: 'cannot-tell',
      reason: 'cool.not-begun',
    });
  });

  it('has not begun while the log still climbs and nobody ended the cook', () => {
    expect(judge('10:00 12, 10:30 38, 11:00 52', 'us-food-code', null)[0]?.reason).toBe('cool.not-begun');
  });

  it('does not mind a gap before the leg or after it', () => {
    const text = '09:00 70, 12:00 64, 12:30 50, 13:00 30, 13:30 18, 13:50 9.5, 18:00 3';
    expect(judge(text, 'fr-catering', '09:00')[0]).toMatchObject({ state: 'pass', worstMin: 110 });
  });
});

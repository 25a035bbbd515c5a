import { backwardsTimeline, wallMin, wallStamp } from '@larderwright/calc/plan';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const HOUR = 60;

describe('a timeline', () => {
  it('runs backwards from the table', () => {
    // Cure 12–48 h, cook 3 h, press and chill 12–24 h, keep 24–72 h (common practice); times derived.
    const steps = [
      { id: 'cure', leastMin: 12 * HOUR, mostMin: 48 * HOUR },
      { id: 'cook', leastMin: 3 * HOUR, mostMin: 3 * HOUR },
      { id: 'press', leastMin: 12 * HOUR, mostMin: 24 * HOUR },
      { id: 'keep', leastMin: 24 * HOUR, mostMin: 72 * HOUR },
    ];
    const timed = backwardsTimeline('2026-05-08T12:00', steps);
    expect(timed.map(({ latestStart, latestEnd }) => [latestStart, latestEnd])).toEqual([
      ['2026-05-06T09:00', '2026-05-06T21:00'],
      ['2026-05-06T21:00', '2026-05-07T00:00'],
      ['2026-05-07T00:00', '2026-05-07T12:00'],
      ['2026-05-07T12:00', '2026-05-08T12:00'],
    ]);
    expect(timed.map(({ earliestStart }) => earliestStart)).toEqual([
      '2026-05-02T09:00',
      '2026-05-04T09:00',
      '2026-05-04T12:00',
      '2026-05-05T12:00',
    ]);
  });

  it('does not guess beyond a step of unknown length', () => {
    const timed = backwardsTimeline('2026-05-08T12:00', [
      { id: 'trim', leastMin: 60, mostMin: 60 },
      { id: 'cook', leastMin: null, mostMin: null },
      { id: 'keep', leastMin: 60, mostMin: null },
    ]);
    expect(timed.map(({ latestStart }) => latestStart)).toEqual([null, null, '2026-05-08T11:00']);
    expect(timed.map(({ earliestStart }) => earliestStart)).toEqual([null, null, null]);
  });

  it('without a day has no times, and without steps nothing', () => {
    expect(backwardsTimeline(null, [{ id: 'a', leastMin: 1, mostMin: 1 }])[0]?.latestStart).toBe(null);
    expect(backwardsTimeline('soon', [{ id: 'a', leastMin: 1, mostMin: 1 }])[0]?.latestStart).toBe(null);
    expect(backwardsTimeline('2026-05-08', [])).toEqual([]);
  });

  it('has every step begin when the one before it ends, and the last end at the table', () => {
    const step = fc
      .integer({ min: 0, max: 5000 })
      .map((min) => ({ id: 's', leastMin: min, mostMin: min + 60 }));
    fc.assert(
      fc.property(fc.array(step, { minLength: 1 }), (steps) => {
        const timed = backwardsTimeline('2026-03-01T00:30', steps);
        for (const [index, { latestEnd }] of timed.entries())
          expect(latestEnd).toBe(timed[index + 1]?.latestStart ?? '2026-03-01T00:30');
      }),
    );
  });
});

describe('wall clock', () => {
  it.each([
    ['2026-02-28T23:59', '2026-02-28T23:59'],
    ['2028-02-29', '2028-02-29T00:00'],
    // A plan is made on the kitchen's clock: the offset is read past.
    ['2026-05-08T12:00:30+02:00', '2026-05-08T12:00'],
    ['2026-05-08 07:05', '2026-05-08T07:05'],
    ['2026-05-08T07:05Z', '2026-05-08T07:05'],
  ])('%s is read as %s', (text, shown) => expect(wallStamp(wallMin(text) ?? Number.NaN)).toBe(shown));

  it.each(['2026-02-29', '2026-13-01', '2026-05-08T24:00', '2026-05-08T12:60', 'Friday', '', '2026-5-8'])(
    '%s is no moment',
    (text) => expect(wallMin(text)).toBe(null),
  );

  it('a day has 1,440 minutes, over midnight, month ends and clock changes alike', () => {
    expect((wallMin('2026-03-30T09:00') ?? 0) - (wallMin('2026-03-29T09:00') ?? 0)).toBe(1440);
    expect((wallMin('2027-01-01') ?? 0) - (wallMin('2026-12-31') ?? 0)).toBe(1440);
    expect(wallMin(null)).toBe(null);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tempAxis, timeTicks } from '../../../worksheets/charts/axis.ts';

const at = (iso: string) => Date.parse(iso);

describe('timeTicks', () => {
  it('marks whole clock times of the batch, not of UTC', () => {
    // derived: a clock 5 h 30 min ahead of UTC shows whole half hours at UTC half hours.
    const ticks = timeTicks(at('2026-03-03T08:40:00+05:30'), at('2026-03-03T11:50:00+05:30'), 330, 4);
    expect(ticks.map((tick) => tick.atMs)).toEqual(
      ['09:00', '10:00', '11:00'].map((clock) => at(`2026-03-03T${clock}:00+05:30`)),
    );
  });

  it('tells the mark at midnight apart', () => {
    const ticks = timeTicks(at('2026-03-03T22:00:00+01:00'), at('2026-03-04T02:00:00+01:00'), 60, 5);
    expect(ticks.filter((tick) => tick.newDay).map((tick) => tick.atMs)).toEqual([
      at('2026-03-04T00:00:00+01:00'),
    ]);
  });

  it('gives one mark for a span without length and none for no time at all', () => {
    expect(timeTicks(1000, 1000, 0, 5)).toHaveLength(1);
    expect(timeTicks(Number.NaN, Number.NaN, 0, 5)).toEqual([]);
  });

  it('never makes more marks than there is room for, and keeps them inside the span', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 * 24 * 60 }),
        fc.integer({ min: 2, max: 20 }),
        fc.integer({ min: -720, max: 840 }),
        (spanMin, most, offsetMin) => {
          const from = at('2026-03-03T07:13:00Z');
          const to = from + spanMin * 60_000;
          const ticks = timeTicks(from, to, offsetMin, most);
          expect(ticks.length).toBeLessThanOrEqual(most + 1);
          for (const tick of ticks) {
            expect(tick.atMs).toBeGreaterThanOrEqual(from);
            expect(tick.atMs).toBeLessThanOrEqual(to);
          }
        },
      ),
    );
  });
});

describe('tempAxis', () => {
  it('covers every temperature and begins and ends on a mark', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -4000, max: 15_000 }).map((hundredth) => hundredth / 100),
        fc.integer({ min: 0, max: 25_000 }).map((hundredth) => hundredth / 100),
        (lowC, spanC) => {
          const { domain, marks } = tempAxis(lowC, lowC + spanC, 8);
          expect(domain[0]).toBeLessThanOrEqual(lowC);
          expect(domain[1]).toBeGreaterThanOrEqual(lowC + spanC);
          expect(marks[0]).toBe(domain[0]);
          expect(marks.at(-1)).toBe(domain[1]);
        },
      ),
    );
  });

  it('gives a single temperature an axis with extent', () => {
    const { domain } = tempAxis(70, 70, 8);
    expect(domain[1]).toBeGreaterThan(domain[0]);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CurvePoint, PointMark } from '../../../worksheets/charts/model.ts';
import { linearScale } from '../../../worksheets/charts/scale.ts';
import {
  linePath,
  seriesPaths,
  stretches,
  tempAt,
  thinned,
  tracePoints,
} from '../../../worksheets/charts/trace.ts';

const MINUTE = 60_000;
const point = (minute: number, tempC: number, mark: PointMark = 'taken'): CurvePoint => ({
  id: `${minute}`,
  atMs: minute * MINUTE,
  tempC,
  mark,
});

describe('tracePoints', () => {
  it('orders readings by time and leaves the excluded and the unreadable out of the line', () => {
    const points = [point(10, 20), point(0, 10), point(5, 90, 'excluded'), point(7, Number.NaN)];
    expect(tracePoints(points).map((each) => each.tempC)).toEqual([10, 20]);
  });

  it('keeps a flagged reading in the line: a flag is no verdict', () => {
    expect(tracePoints([point(0, 10), point(5, 40, 'flagged')])).toHaveLength(2);
  });
});

describe('stretches', () => {
  it('bridges a gap of exactly 60 min and none longer', () => {
    expect(stretches([point(0, 60), point(60, 30)])).toHaveLength(1);
    expect(stretches([point(0, 60), point(61, 30)])).toHaveLength(2);
  });

  it('loses no reading', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 5000 }), { maxLength: 60 }), (minutes) => {
        const points = tracePoints(minutes.map((minute) => point(minute, minute)));
        expect(stretches(points).flat()).toEqual(points);
      }),
    );
  });
});

describe('thinned', () => {
  it('returns a short log whole', () => {
    const points = [point(0, 1), point(1, 2)];
    expect(thinned(points, 100)).toEqual(points);
  });

  it('keeps the first, last, highest and lowest reading of a long log', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -30, max: 120, noNaN: true }), { minLength: 900, maxLength: 1200 }),
        (temps) => {
          const points = temps.map((tempC, minute) => point(minute, tempC));
          const kept = thinned(points, 50);
          expect(kept.length).toBeLessThanOrEqual(200);
          expect(kept[0]).toBe(points[0]);
          expect(kept.at(-1)).toBe(points.at(-1));
          expect(Math.max(...kept.map((each) => each.tempC))).toBe(Math.max(...temps));
          expect(Math.min(...kept.map((each) => each.tempC))).toBe(Math.min(...temps));
          const times = kept.map((each) => each.atMs);
          expect(times).toEqual([...times].sort((a, b) => a - b));
        },
      ),
    );
  });
});

describe('seriesPaths', () => {
  const x = linearScale([0, 300 * MINUTE], [0, 300]);
  const y = linearScale([0, 100], [100, 0]);

  it('draws one line through readings without a gap', () => {
    const paths = seriesPaths([point(0, 0), point(30, 50)], x, y, 300);
    expect(paths).toEqual({ line: 'M0 100L30 50', gaps: '' });
  });

  it('lifts the pen over a gap and hands the gap back to be dotted', () => {
    const paths = seriesPaths([point(0, 0), point(30, 50), point(200, 20), point(210, 10)], x, y, 300);
    expect(paths.line).toBe('M0 100L30 50M200 80L210 90');
    expect(paths.gaps).toBe('M30 50L200 80');
  });

  it('writes no NaN, whatever it is given', () => {
    const paths = seriesPaths([point(0, Number.NaN), point(Number.NaN, 4)], x, y, 300);
    expect(`${paths.line}${paths.gaps}`).toBe('');
    expect(linePath([{ x: 1, y: 2 }])).toBe('');
  });
});

describe('tempAt', () => {
  const points = [point(10, 50), point(0, 70), point(5, 99, 'excluded')];
  it('stands on the straight line between readings', () => {
    expect(tempAt(points, 5 * MINUTE)).toBe(60);
    expect(tempAt(points, 10 * MINUTE)).toBe(50);
    expect(tempAt(points, 0)).toBe(70);
  });
  it('knows nothing outside the readings', () => {
    expect(tempAt(points, 11 * MINUTE)).toBeNull();
    expect(tempAt(points, -MINUTE)).toBeNull();
    expect(tempAt([], 0)).toBeNull();
  });
});

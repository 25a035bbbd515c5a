import { controlChart, LEAST_BATCHES, median, ovenBias } from '@larderwright/calc/trends';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

/** Mean 0, sigma near 1 in long runs: the last values are the test, the first set the limits. */
const STEADY = [1, -1, 1, -1, 1, -1, 1, -1, 1, -1, 1, -1, 1, -1, 1, -1, 1, -1, 1, -1];

describe('limits', () => {
  it('are not drawn from nine batches, and are from ten', () => {
    expect(LEAST_BATCHES).toBe(10); // common practice, no source: the handbook's example has ten
    expect(controlChart(STEADY.slice(0, 9)).limits).toBeNull();
    expect(controlChart(STEADY.slice(0, 10)).limits).toMatchObject({ isTrial: true });
    expect(controlChart(STEADY).limits).toMatchObject({ isTrial: false });
  });

  it('are not drawn where nothing differs', () => {
    expect(controlChart(Array.from({ length: 12 }, () => 5)).limits).toBeNull();
  });

  it('pass over what was not recorded, and take no range across it', () => {
    const { points, recorded } = controlChart([1, null, 3, 4]);
    expect(recorded).toBe(3);
    expect(points.map(({ range }) => range)).toEqual([null, null, null, 1]);
    expect(points.map(({ value }) => value)).toEqual([1, null, 3, 4]);
  });

  it('move with the values and keep their width', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -500, max: 500 }), { minLength: 12, maxLength: 40 }),
        fc.integer({ min: -1000, max: 1000 }),
        (values, shift) => {
          const here = controlChart(values).limits;
          const there = controlChart(values.map((value) => value + shift)).limits;
          if (here === null || there === null) return here === there;
          const width = here.upper - here.lower;
          return (
            Math.abs(there.mean - here.mean - shift) < 1e-6 &&
            Math.abs(there.upper - there.lower - width) < 1e-6 &&
            here.lower < here.mean &&
            here.mean < here.upper
          );
        },
      ),
    );
  });
});

/** The tests of the Western Electric handbook (1956), as it is described; the values are derived. */
describe('signals', () => {
  /** Signals of the last value, on a chart whose first 20 values swing evenly and whose last ones are these. */
  const lastOf = (...tail: number[]) => {
    const chart = controlChart([...STEADY, ...STEADY, ...STEADY, ...tail]);
    return { signals: chart.points.at(-1)?.signals, limits: chart.limits };
  };
  it('a value beyond three sigma', () => {
    expect(lastOf(8).signals).toContain('beyond-3');
    expect(lastOf(-8).signals).toContain('beyond-3');
    expect(lastOf(1).signals).toEqual([]);
  });

  it('two of three beyond two sigma on one side, and not on two sides', () => {
    const { limits } = lastOf(4.2, 0, 4.2);
    expect(limits && 4.2 < limits.upper && 4.2 > limits.mean + 2 * limits.sigma).toBe(true);
    expect(lastOf(4.2, 0, 4.2).signals).toContain('two-of-three');
    expect(lastOf(4.2, 0, -4.2).signals).not.toContain('two-of-three');
    expect(lastOf(4.2, 0, 0, 4.2).signals).not.toContain('two-of-three');
  });

  it('four of five beyond one sigma on one side', () => {
    expect(lastOf(2.2, 2.2, 0, 2.2, 2.2).signals).toContain('four-of-five');
    expect(lastOf(2.2, 2.2, 0, 0, 2.2).signals).not.toContain('four-of-five');
  });

  it('eight in a row on one side of the mean; the newest must stand there too', () => {
    expect(lastOf(...Array.from({ length: 8 }, () => 0.7)).signals).toContain('eight-in-a-row');
    expect(lastOf(...Array.from({ length: 8 }, () => 0.7), -1).signals).not.toContain('eight-in-a-row');
  });
});

describe('the bias of an oven', () => {
  it('is the median of actual over predicted, counted over cooks with both times', () => {
    const cooks = [
      { oven: 'Deck', predictedMin: 100, actualMin: 110 },
      { oven: 'Deck', predictedMin: 100, actualMin: 90 },
      { oven: 'Deck', predictedMin: 100, actualMin: 130 },
      { oven: 'Deck', predictedMin: null, actualMin: 130 },
      { oven: '', predictedMin: 80, actualMin: null },
    ];
    expect(ovenBias(cooks)).toEqual([
      { oven: 'Deck', cooks: 3, medianRatio: 1.1 }, // derived
      { oven: '', cooks: 0, medianRatio: null },
    ]);
  });

  it('median of an even number is the mean of the middle two', () => {
    expect(median([4, 1, 3, 2])).toBe(2.5);
    expect(median([])).toBeNull();
  });
});

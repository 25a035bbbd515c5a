import { projectCrossingMs } from '@larderwright/calc/probe-log';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const MIN = 60_000;
const log = (points: readonly (readonly [number, number])[]) =>
  points.map(([minute, tempC]) => ({ atMs: minute * MIN, tempC }));

describe('projectCrossingMs', () => {
  it('finds the crossing of a Newton curve exactly', () => {
    // derived: T = 4 + 56 exp(-0.005 t); 21 °C at ln(56 / 17) / 0.005 = 238.4 min
    const points = log([0, 20, 40].map((minute) => [minute, 4 + 56 * Math.exp(-0.005 * minute)]));
    expect((projectCrossingMs(points, 4, 21) ?? 0) / MIN).toBeCloseTo(Math.log(56 / 17) / 0.005, 6);
  });

  it('sees at 13:50 that the invented pâté en croûte needs about four hours to 21 °C in a 4 °C room', () => {
    // 13:10 60.6, 13:30 55.6, 13:50 50.7; 57 °C was crossed at 13:24: about 17:20
    const points = log([
      [790, 60.6],
      [810, 55.6],
      [830, 50.7],
    ]);
    const minutes = (projectCrossingMs(points, 4, 21) ?? 0) / MIN;
    expect(Math.abs(minutes - 804 - 240)).toBeLessThan(15);
  });

  it('sees at 14:50 that the invented parfait reaches 70.5 °C about 15:15 in 76 °C steam', () => {
    const points = log([
      [870, 63.5],
      [875, 64.8],
      [880, 65.7],
      [885, 66.6],
      [890, 67.4],
    ]);
    expect(Math.abs((projectCrossingMs(points, 76, 70.5) ?? 0) / MIN - 915)).toBeLessThan(3);
  });

  it.each([
    [
      'two readings',
      log([
        [0, 60],
        [30, 50],
      ]),
      4,
      21,
    ],
    [
      'less than 20 min',
      log([
        [0, 60],
        [5, 57],
        [19, 50],
      ]),
      4,
      21,
    ],
    [
      'a target beyond the medium',
      log([
        [0, 60],
        [20, 50],
        [40, 42],
      ]),
      22,
      21,
    ],
    [
      'a target already passed',
      log([
        [0, 30],
        [20, 24],
        [40, 20],
      ]),
      4,
      21,
    ],
    [
      'a core that stands still',
      log([
        [0, 40],
        [20, 40],
        [40, 40],
      ]),
      4,
      21,
    ],
    [
      'a core that warms',
      log([
        [0, 40],
        [20, 42],
        [40, 44],
      ]),
      4,
      21,
    ],
    [
      'a core at the medium',
      log([
        [0, 30],
        [20, 10],
        [40, 4],
      ]),
      4,
      2,
    ],
    ['no readings', [], 4, 21],
  ] as const)('draws nothing from %s', (_, points, medium, target) => {
    expect(projectCrossingMs(points, medium, target)).toBeNull();
  });

  it('is always later than the last reading', () => {
    const points = fc.array(fc.double({ min: 5, max: 75, noNaN: true }), { minLength: 3, maxLength: 12 });
    fc.assert(
      fc.property(points, (temps) => {
        const readings = temps.map((tempC, index) => ({ atMs: index * 15 * MIN, tempC }));
        const at = projectCrossingMs(readings, 2, 4.5);
        if (at !== null) expect(at).toBeGreaterThan(readings.at(-1)?.atMs ?? 0);
      }),
    );
  });
});

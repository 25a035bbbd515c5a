import {
  airStage,
  type BatchThermal,
  constantMaterial,
  fatLining,
  type HeatStage,
  mouldLayers,
  simulate,
  waterStage,
} from '@larderwright/calc/heat';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { valueAt } from './curve.ts';
import { BRICK } from './references.ts';

const food = constantMaterial(0.45, 1050, 3500);
const batch: BatchThermal = { shape: BRICK, material: food, startC: 4 };
const until = (minutes: number) => ({ when: 'time', minutes }) as const;
const bath = (tempC: number, minutes: number): HeatStage =>
  waterStage('poach', tempC, 100, 60, until(minutes));

describe('a simulation', () => {
  it('refuses measures, temperatures, films and times that are no numbers to compute with, and never throws', () => {
    const stage = bath(80, 10);
    const bad = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const value of [...bad, 0, -5]) {
      expect(
        simulate(
          { ...batch, shape: { ...BRICK, kind: 'rectangular', lengthMm: value, widthMm: 90, depthMm: 70 } },
          [stage],
        ),
      ).toBeNull();
      const layer = { thicknessM: value, conductivityWmK: 1, heatCapacityJm3K: 2e6 };
      expect(simulate({ ...batch, layers: { side: [layer] } }, [stage])).toBeNull();
    }
    for (const value of bad) {
      expect(simulate({ ...batch, startC: value }, [stage])).toBeNull();
      expect(simulate(batch, [bath(value, 10)])).toBeNull();
      expect(simulate(batch, [bath(80, value)])).toBeNull();
      expect(simulate(batch, [{ ...stage, air: { tempC: 80, filmWm2K: value } }])).toBeNull();
      expect(simulate(batch, [{ ...stage, air: { tempC: [[0, value]], filmWm2K: 10 } }])).toBeNull();
    }
    expect(simulate(batch, [{ ...stage, air: { tempC: [], filmWm2K: 10 } }])).toBeNull();
    expect(simulate(batch, [bath(80, -1)])).toBeNull();
  });

  it('of no stages is the start, and a stage of no time changes nothing', () => {
    expect(simulate(batch, [])?.coreC[0]).toBeCloseTo(4, 6);
    expect(simulate(batch, [bath(80, 0)])?.coreC.at(-1)).toBeCloseTo(4, 6);
  });

  it('hands the whole field on: a stage cut in two ends as the stage in one', () => {
    const whole = simulate(batch, [bath(85, 60)]);
    const cut = simulate(batch, [bath(85, 25), bath(85, 35)]);
    expect(Math.abs((whole?.coreC.at(-1) ?? 0) - (cut?.coreC.at(-1) ?? 9))).toBeLessThan(0.02);
    expect(Math.abs((whole?.meanC.at(-1) ?? 0) - (cut?.meanC.at(-1) ?? 9))).toBeLessThan(0.02);
  });

  it('does not change what it is given', () => {
    const stages = [bath(85, 10), airStage('rest', 20, until(5))];
    const before = JSON.stringify([batch, stages]);
    simulate(batch, stages);
    expect(JSON.stringify([batch, stages])).toBe(before);
  });

  it('gives the same run twice', () => {
    const [first, second] = [simulate(batch, [bath(85, 30)]), simulate(batch, [bath(85, 30)])];
    expect(first?.coreC).toEqual(second?.coreC);
  });

  it('lands on the core temperature a stage ends at, and says when it never got there', () => {
    const end = { when: 'core-reaches', tempC: 60, mostMin: 300 } as const;
    const run = simulate(batch, [{ ...bath(85, 1), end }]);
    expect(run?.stages[0]?.reached).toBe(true);
    expect(Math.abs((run?.coreC.at(-1) ?? 0) - 60)).toBeLessThan(0.01);
    const never = simulate(batch, [{ ...bath(55, 1), end }]);
    expect(never?.stages[0]?.reached).toBe(false);
    expect(never?.stages[0]?.timeMin).toBeCloseTo(300, 6);
  });

  it('finds the coldest point: above the middle when the top lies in slow air, below it when the base is shut off', () => {
    const slowTop = simulate(batch, [waterStage('poach', 85, 75, 85, until(60))]);
    expect(
      valueAt(slowTop?.timesMin ?? new Float64Array(), slowTop?.coreHeightMm ?? new Float64Array(), 60),
    ).toBeGreaterThan(40);
    const shutBase = simulate(batch, [{ ...bath(85, 60), faces: { bottom: 'closed' } }]);
    expect(shutBase?.coreHeightMm.at(-1)).toBeLessThan(5);
    expect(shutBase?.stages[0]?.coldest).toMatchObject({ acrossMm: 0, upMm: 0, alongMm: 0 });
  });

  it('a hotter bath, a faster film or a warmer start never leaves the core colder', () => {
    const core = (startC: number, bathC: number, film: number) =>
      simulate(
        { ...batch, startC },
        [{ kind: 'bath', end: until(50), air: { tempC: bathC, filmWm2K: film } }],
        { tier: 'preview' },
      )?.coreC.at(-1) ?? Number.NaN;
    const start = fc.double({ min: 0, max: 20, noNaN: true });
    const bathC = fc.double({ min: 60, max: 95, noNaN: true });
    const film = fc.double({ min: 10, max: 800, noNaN: true });
    const more = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(start, bathC, film, more, (a, b, c, d) => {
        const base = core(a, b, c);
        const slack = 0.02;
        expect(core(a + 5 * d, b, c)).toBeGreaterThan(base - slack);
        expect(core(a, b + 5 * d, c)).toBeGreaterThan(base - slack);
        expect(core(a, b, c * (1 + d))).toBeGreaterThan(base - slack);
      }),
      { numRuns: 25 },
    );
  });

  it('a lining, a lid, a cover or stacking only slows the chill', () => {
    const cold = (layers: BatchThermal['layers'], stage: HeatStage) =>
      simulate({ ...batch, startC: 70, ...(layers ? { layers } : {}) }, [stage])?.stages[0]?.timeMin ??
      Number.NaN;
    const end = { when: 'core-falls', tempC: 21, mostMin: 900 } as const;
    const fridge = airStage('refrigerate', 3, end);
    const usual = cold(undefined, fridge);
    expect(cold(mouldLayers({ wall: 'stoneware' }), fridge)).toBeGreaterThan(usual);
    expect(cold(mouldLayers({ wall: null, inside: [fatLining(3)] }), fridge)).toBeGreaterThan(usual);
    expect(cold(mouldLayers({ wall: null, lid: { headspaceMm: 5 } }), fridge)).toBeGreaterThan(usual);
    expect(cold(undefined, { ...fridge, cover: { top: 0.1 } })).toBeGreaterThan(usual);
    expect(cold(undefined, airStage('refrigerate', 3, end, true))).toBeGreaterThan(usual);
  });
});

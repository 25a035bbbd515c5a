import { constantMaterial, type HeatShape, type HeatStage, simulate } from '@larderwright/calc/heat';
import { afterAll, describe, expect, it } from 'vitest';
import { theta } from './judge/series.ts';
import { printTable } from './print.ts';
import { BRICK, HALF_ROUND } from './references.ts';

const food = constantMaterial(0.45, 1050, 3500);
const ALPHA_MM2_MIN = (0.45 / (1050 * 3500)) * 6e7;

/** Temperature of the hottest node of the fine net at the end of a stage, °C. */
function hottestNode(shape: HeatShape, stage: HeatStage, fineness: number, startC: number): number {
  const run = simulate({ shape, material: food, startC }, [stage], { fineness, toleranceC: 1e-4 });
  return run?.stages[0]?.hottest.tempC ?? Number.NaN;
}

const rows: (string | number)[][] = [];
afterAll(() => printTable('Measured order', ['what', 'coarse error', 'fine error', 'order'], rows));

function order(what: string, coarse: number, fine: number): number {
  const measured = Math.log2(Math.abs(coarse / fine));
  rows.push([what, coarse.toExponential(2), fine.toExponential(2), measured.toFixed(2)]);
  return measured;
}

describe('the order of the method', () => {
  it('is two in space on a smooth problem: half the cell, a quarter of the error', () => {
    // Film 45 and a late hour: the slowest mode is left. Reference: product of three slab series, Biot 3.
    const minutes = 25;
    const wanted = 80 * theta('slab', 3, (ALPHA_MM2_MIN * minutes) / 30 ** 2) ** 3;
    const stage: HeatStage = {
      kind: 'refrigerate',
      end: { when: 'time', minutes },
      air: { tempC: 0, filmWm2K: 45 },
    };
    const error = (fineness: number) =>
      hottestNode({ kind: 'cube', sideMm: 60 }, stage, fineness, 80) - wanted;
    const measured = order('space, cube, one net', error(8), error(16));
    expect(measured).toBeGreaterThan(1.8);
    expect(measured).toBeLessThan(2.3);
  });

  it('is reported at a curved wall', () => {
    const minutes = 80;
    const stage: HeatStage = {
      kind: 'refrigerate',
      end: { when: 'time', minutes },
      air: { tempC: 0, filmWm2K: 45 },
      faces: { top: 'closed', end: 'closed' },
    };
    const wanted = 80 * theta('cylinder', 4.5, (ALPHA_MM2_MIN * minutes) / 45 ** 2);
    const error = (fineness: number) => hottestNode(HALF_ROUND, stage, fineness, 80) - wanted;
    expect(order('space, half-cylinder, one net', error(6), error(12))).toBeGreaterThan(1.5);
  });

  it('is two in time on a smooth problem: half the step, a quarter of the error', () => {
    const stage: HeatStage = {
      kind: 'bath',
      end: { when: 'time', minutes: 80 },
      air: { tempC: { fromC: 4, toC: 85, tauMin: 20 }, filmWm2K: 300 },
    };
    const core = (fixedStepS: number) =>
      simulate({ shape: BRICK, material: food, startC: 4 }, [stage], { fineness: 4, fixedStepS })?.coreC.at(
        -1,
      ) ?? Number.NaN;
    const fine = core(10);
    const measured = order('time, warming bath, steps of 160 and 80 s', core(160) - fine, core(80) - fine);
    expect(measured).toBeGreaterThan(1.8);
    expect(measured).toBeLessThan(2.4);
  });
});

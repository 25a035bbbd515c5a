import { readFileSync } from 'node:fs';
import { STILL_FREEZER_FILM_WM2K, temperInFreezer, temperRefusal } from '@larderwright/calc/chill-budget';
import { describe, expect, it } from 'vitest';

const cubes = { cubeMm: 25, startC: 4, freezerC: -18, filmWm2K: STILL_FREEZER_FILM_WM2K, longestMin: 90 };

describe('cubes of 25 mm from 4 °C in a freezer at −18 °C', () => {
  it('are firm at the edge near 10.85 min, a fifth ice near 26.2 and half ice near 58.5 (derived, finite volumes on two grids)', async () => {
    const run = await temperInFreezer(cubes);
    // The quick tier and another conductivity of the frozen part: within a tenth.
    expect(Math.abs((run?.firmMin ?? 0) / 10.85 - 1)).toBeLessThan(0.15);
    expect(Math.abs((run?.stiffMin ?? 0) / 26.16 - 1)).toBeLessThan(0.1);
    expect(Math.abs((run?.solidMin ?? 0) / 58.5 - 1)).toBeLessThan(0.1);
  });

  it('are firm and not yet stiff at the usual 15 to 20 min (common practice, no source)', async () => {
    const run = await temperInFreezer(cubes);
    expect(run?.firmMin ?? 99).toBeLessThan(15);
    expect(run?.stiffMin ?? 0).toBeGreaterThan(20);
    expect(run?.coreAtFirmC ?? -99).toBeGreaterThan(-1.7);
  });

  it('take longer when larger, and sooner in a blast', async () => {
    const firm = async (change: Partial<typeof cubes>) =>
      (await temperInFreezer({ ...cubes, ...change }))?.firmMin ?? Number.POSITIVE_INFINITY;
    const usual = await firm({});
    expect(await firm({ cubeMm: 40 })).toBeGreaterThan(usual);
    expect(await firm({ filmWm2K: 30 })).toBeLessThan(usual);
  });

  it('tell null for what does not happen in the time looked at', async () => {
    const run = await temperInFreezer({ ...cubes, longestMin: 5 });
    expect(run).toMatchObject({ firmMin: null, stiffMin: null, solidMin: null, coreAtFirmC: null });
  });
});

describe('a tempering that cannot be run', () => {
  it.each([
    [{ freezerC: -1 }, 'not-below-freezing'],
    [{ startC: -3 }, 'already-frozen'],
    [{ cubeMm: 0 }, 'no-measures'],
    [{ cubeMm: Number.NaN }, 'no-measures'],
    [{ filmWm2K: Number.POSITIVE_INFINITY }, 'no-measures'],
    [{ freezerC: -60 }, 'no-measures'],
    [{ startC: Number.NaN }, 'no-measures'],
  ] as const)('%o: %s', async (change, reason) => {
    expect(temperRefusal({ ...cubes, ...change })).toBe(reason);
    expect(await temperInFreezer({ ...cubes, ...change })).toBe(null);
  });

  it('the heat engine is fetched by the call and not before', () => {
    const face = readFileSync('calc/chill-budget/temper.ts', 'utf8');
    expect(face).toMatch(/await import\('\.\/temper-run\.ts'\)/);
    expect(face).not.toMatch(/^import .*heat/m);
  });
});

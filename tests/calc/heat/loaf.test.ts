import {
  bathStage,
  type Composition,
  fatLining,
  foodMaterial,
  type Material,
  mouldLayers,
  ovenPan,
  simulate,
  type WallMaterial,
} from '@larderwright/calc/heat';
import { afterAll, describe, expect, it } from 'vitest';
import { printTable } from './print.ts';

/** A coarse pork mix, a quarter fat. Its density of 1.06 is 1.9 kg in the 1.8 L of the tin. */
const MIX: Composition = {
  water: 0.575,
  protein: 0.16,
  fat: 0.245,
  carbohydrate: 0.005,
  fibre: 0,
  ash: 0.015,
};
const pork = foodMaterial(MIX, { densityKgM3: 1900 / 1.8 });
const unmelting = foodMaterial(MIX, { densityKgM3: 1900 / 1.8, fatMelting: false });

interface Kitchen {
  readonly startC?: number;
  readonly waterC?: number;
  readonly waterG?: number;
  readonly covered?: boolean;
  readonly levelMm?: number;
  readonly liningMm?: number;
  readonly ovenC?: number;
  readonly depthMm?: number;
  readonly wall?: WallMaterial;
  readonly lid?: { readonly headspaceMm: number };
  readonly altitudeM?: number;
  readonly material?: Material | null;
}

/** Minutes until the core is at 68 °C, and the bath at that moment. */
function cook(kitchen: Kitchen) {
  const {
    startC = 4,
    waterC = 55,
    waterG = 3000,
    covered = true,
    levelMm = 50,
    liningMm = 3,
    ovenC = 177,
  } = kitchen;
  const { depthMm = 75, wall = 'tinplate', lid = null, altitudeM = 0, material = pork } = kitchen;
  if (material === null) throw new Error('a sound composition was refused');
  const pan = ovenPan({ waterG, covered, mouldPlanMm2: 240 * 100, altitudeM });
  const run = simulate(
    {
      shape: {
        kind: 'rectangular',
        lengthMm: 240 - 2 * liningMm,
        widthMm: 100 - 2 * liningMm,
        depthMm: depthMm - 2 * liningMm,
      },
      material,
      startC,
      layers: mouldLayers({
        wall,
        inside: liningMm > 0 ? [fatLining(liningMm)] : [],
        insideOverTop: true,
        lid,
      }),
    },
    [bathStage(ovenC, waterC, levelMm, pan, { when: 'core-reaches', tempC: 68, mostMin: 600 })],
  );
  if (run === null) throw new Error('a sound problem was refused');
  return { minutes: run.stages[0]?.timeMin ?? Number.NaN, bathC: run.bathC.at(-1) ?? Number.NaN, run };
}

describe('a coarse pork loaf in a fat-lined tin, covered bath two thirds up, oven at 177 °C', () => {
  const rows: (string | number)[][] = [];
  const show = (what: string, kitchen: Kitchen) => {
    const { minutes, bathC } = cook(kitchen);
    rows.push([what, minutes.toFixed(1), bathC.toFixed(1)]);
    return minutes;
  };
  afterAll(() =>
    printTable('Loaf of 240 × 100 × 75 mm, 1.9 kg, to 68 °C', ['kitchen', 'min', 'bath at the end °C'], rows),
  );

  it.each([50, 60])(
    'reaches 68 °C in 90–130 min with tap water at %i °C (common practice, no source)',
    (waterC) => {
      const minutes = show(`as given, tap water at ${waterC} °C`, { waterC });
      expect(minutes).toBeGreaterThan(90);
      expect(minutes).toBeLessThan(130);
    },
  );

  it('is moved by bath, cover, depth of water and start as physics has it', () => {
    const usual = show('tap water at 55 °C', {});
    expect(show('bath of 1.5 kg', { waterG: 1500 })).toBeLessThan(usual);
    expect(show('bath of 5 kg', { waterG: 5000 })).toBeGreaterThan(usual);
    expect(show('open bath', { covered: false })).toBeGreaterThan(usual);
    expect(show('water a third up', { levelMm: 25 })).toBeGreaterThan(usual);
    expect(show('water to the rim', { levelMm: 75 })).toBeLessThan(usual);
    expect(show('loaf from 8 °C', { startC: 8 })).toBeLessThan(usual);
    expect(show('loaf from 1 °C', { startC: 1 })).toBeGreaterThan(usual);
    expect(show('oven at 150 °C', { ovenC: 150 })).toBeGreaterThan(usual);
    expect(show('no lining', { liningMm: 0 })).toBeLessThan(usual);
    expect(show('stoneware of 8 mm', { wall: 'stoneware' })).toBeGreaterThan(usual);
    expect(show('lid over 5 mm of air', { lid: { headspaceMm: 5 } })).toBeGreaterThan(usual);
    expect(show('90 mm deep', { depthMm: 90 })).toBeGreaterThan(usual);
    expect(show('fat that does not melt', { material: unmelting })).toBeLessThan(usual);
    expect(show('at 2000 m', { altitudeM: 2000 })).toBeGreaterThan(usual);
  });

  it('takes in through the faces what its heat content rises by, within 0.1 %', () => {
    for (const wall of ['tinplate', 'cast-iron', 'stoneware', 'silicone'] as const) {
      const { energy } = cook({ wall }).run;
      expect(Math.abs(energy.inJ / energy.riseJ - 1)).toBeLessThan(1e-3);
    }
  });
});

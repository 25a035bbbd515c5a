import {
  type Composition,
  constantMaterial,
  foodMaterial,
  type HeatRun,
  iceFraction,
  type Material,
  simulate,
} from '@larderwright/calc/heat';
import { afterAll, describe, expect, it } from 'vitest';
import { timeTo } from './curve.ts';
import { printTable } from './print.ts';
import { CUBE } from './references.ts';

const lean: Composition = { water: 0.72, protein: 0.2, fat: 0.07, carbohydrate: 0, fibre: 0, ash: 0.01 };

function chill(material: Material): HeatRun {
  const stage = {
    kind: 'freeze',
    end: { when: 'time', minutes: 105 },
    air: { tempC: -18, filmWm2K: 12 },
  } as const;
  const run = simulate({ shape: CUBE, material, startC: 4 }, [stage], {
    everyMin: 0.1,
    pictureEveryMin: 0.5,
  });
  if (run === null) throw new Error('a sound problem was refused');
  return run;
}

/** Minutes until a share of the water is ice, from the pictures of the run. */
function iceTime({ pictures, network }: HeatRun, freezingC: number, share: number): number {
  const { volumeM3 } = network.solid;
  const whole = volumeM3.reduce((sum, volume) => sum + volume, 0);
  const shares = pictures.map(({ tempC }) =>
    tempC.reduce(
      (sum, t, node) => sum + (iceFraction(lean, freezingC, t) * (volumeM3[node] ?? 0)) / whole / lean.water,
      0,
    ),
  );
  return timeTo(
    Float64Array.from(pictures, ({ timeMin }) => timeMin),
    Float64Array.from(shares),
    share,
  );
}

/**
 * derived: enthalpy finite volumes on two grids, extrapolated, by a code apart from this one. Minutes until the
 * middle of a face and the core fall to a temperature, and until a share of the water is ice.
 */
const CASES = [
  {
    id: 'N16',
    freezingC: -1.7,
    face: { 0: 4.37, 1: 5.82, 2: 10.85, 3: 41.97 },
    core: { 0: 8.15, 1: 10.43, 2: 58.51, 5: 75.64, 10: 97.93 },
    ice: { 0.2: 26.16, 0.5: 58.5 },
  },
  {
    id: 'N17',
    freezingC: -1,
    face: { 0: 4.38, 1: 5.93, 2: 41.05, 3: 61.21 },
    core: { 0: 8.62, 2: 71.35, 5: 81.37, 10: 97.22 },
    ice: { 0.2: 23.97, 0.5: 53.37 },
  },
  {
    id: 'N19',
    freezingC: -2.2,
    face: { 0: 4.37, 1: 5.8, 2: 7.37, 3: 23.42 },
    core: { 0: 8.04, 1: 9.8, 2: 13.69, 5: 71.1, 10: 97.58 },
    ice: { 0.2: 27.81, 0.5: 62.5 },
  },
] as const;

describe('a 25 mm cube of lean meat put in air at −18 °C', () => {
  const rows: (string | number)[][] = [];
  afterAll(() =>
    printTable(
      'Freezing of 25 mm cubes: model minus reference, min',
      ['id', 'what', 'reference', 'error'],
      rows,
    ),
  );

  it('without latent heat follows the product series', () => {
    // derived: N15, product of three slab series
    const run = chill(constantMaterial(0.45, 1050, 3500));
    const faces = { 0: 4.298, 1: 5.725, 2: 7.198 };
    for (const [below, minutes] of Object.entries(faces)) {
      expect(Math.abs(timeTo(run.timesMin, run.topC, -Number(below), 'down') - minutes)).toBeLessThan(0.05);
    }
    expect(Math.abs(timeTo(run.timesMin, run.hottestC, 0, 'down') - 8.098)).toBeLessThan(0.05);
    expect(Math.abs(timeTo(run.timesMin, run.hottestC, -2, 'down') - 10.95)).toBeLessThan(0.05);
  });

  it.each(CASES)(
    'freezing at $freezingC °C ($id) is met: core 0 °C ±0.05, face −2 °C ±0.5, the rest ±0.3 min',
    ({ id, freezingC, face, core, ice }) => {
      const material = foodMaterial(lean, {
        freezingC,
        densityKgM3: 1050,
        conductivity: 'parallel',
        enthalpy: 'chen',
      });
      if (material === null) throw new Error('a sound composition was refused');
      const run = chill(material);
      const check = (what: string, wanted: number, got: number, tolerance: number) => {
        rows.push([id, what, wanted, (got - wanted).toFixed(3)]);
        expect(Math.abs(got - wanted)).toBeLessThan(tolerance);
      };
      for (const [below, minutes] of Object.entries(face)) {
        const got = timeTo(run.timesMin, run.topC, -Number(below), 'down');
        check(`face −${below} °C`, minutes, got, below === '2' ? 0.5 : 0.3);
      }
      for (const [below, minutes] of Object.entries(core)) {
        const got = timeTo(run.timesMin, run.hottestC, -Number(below), 'down');
        check(`core −${below} °C`, minutes, got, below === '0' ? 0.05 : 0.3);
      }
      for (const [share, minutes] of Object.entries(ice)) {
        check(`ice ${share} of the water`, minutes, iceTime(run, freezingC, Number(share)), 0.3);
      }
      expect(Math.abs(run.energy.inJ / run.energy.riseJ - 1)).toBeLessThan(1e-3);
    },
  );
});

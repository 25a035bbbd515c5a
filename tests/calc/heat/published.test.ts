import {
  type Composition,
  chenEnthalpyJkg,
  constantMaterial,
  foodMaterial,
  type HeatShape,
  type HeatStage,
  type Material,
  simulate,
} from '@larderwright/calc/heat';
import { afterAll, describe, expect, it } from 'vitest';
import { timeTo, valueAt } from './curve.ts';
import { theta } from './judge/series.ts';
import { printTable } from './print.ts';

/** Meat as the model checks beside the measured cases took it. */
const meat = constantMaterial(0.46, 1060, 3500);
const rows: (string | number)[][] = [];

/** Adds a line to the table: what was published, what comes out here, and by how much it is off. */
function report(
  id: string,
  what: string,
  published: number | string,
  ours: number | string,
  unit: string,
): number {
  const error = typeof published === 'number' && typeof ours === 'number' ? ours / published - 1 : Number.NaN;
  const shown = (value: number | string) => (typeof value === 'number' ? value.toFixed(2) : value);
  rows.push([
    id,
    what,
    shown(published),
    shown(ours),
    unit,
    Number.isNaN(error) ? '–' : `${(100 * error).toFixed(1)} %`,
  ]);
  return error;
}

function coolHours(shape: HeatShape, startC: number, airC: number, film: number, downToC: number): number {
  const stage: HeatStage = {
    kind: 'refrigerate',
    end: { when: 'core-falls', tempC: downToC, mostMin: 2000 },
    air: { tempC: airC, filmWm2K: film },
  };
  const run = simulate({ shape, material: meat, startC }, [stage]);
  return (run?.stages[0]?.timeMin ?? Number.NaN) / 60;
}

/** Minutes until the middle of a sphere reaches a temperature, by the series. */
function sphereMin(
  k: number,
  alpha: number,
  radiusM: number,
  film: number,
  from: number,
  to: number,
  bath: number,
) {
  const wanted = (to - bath) / (from - bath);
  let [low, high] = [0.01, 5];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (theta('sphere', (film * radiusM) / k, middle) > wanted) low = middle;
    else high = middle;
  }
  return (low * radiusM * radiusM) / alpha / 60;
}

afterAll(() =>
  printTable(
    'Published and measured cases, one by one',
    ['id', 'case', 'published', 'here', 'unit', 'error'],
    rows,
  ),
);

describe('worked examples of textbooks', () => {
  it('an apple of 6 cm from 15 to 3 °C (Singh & Heldman 4.26; the printed answer, read from a chart, is not confirmed)', () => {
    const minutes = sphereMin(0.355, 0.355 / (820 * 3600), 0.03, 50, 15, 3, 2);
    report('TB1', 'apple: answer not readable, 63.0 min by the series', 63, minutes, 'min');
    expect(Math.abs(minutes - 62.97)).toBeLessThan(0.1);
  });

  it('steaks of 2 cm until their surface is at 2 °C (Çengel 2008, solution 11-44: 93.1 min)', () => {
    const material = constantMaterial(0.45, 0.45 / (0.91e-7 * 3500), 3500);
    const stage: HeatStage = {
      kind: 'freeze',
      end: { when: 'time', minutes: 120 },
      air: { tempC: -11, filmWm2K: 9 },
    };
    const run = simulate({ shape: { kind: 'slab', thicknessMm: 20 }, material, startC: 25 }, [stage]);
    const minutes = run === null ? Number.NaN : timeTo(run.timesMin, run.topC, 2, 'down');
    expect(Math.abs(report('TB2', 'steaks to a surface of 2 °C', 93.1, minutes, 'min'))).toBeLessThan(0.005);
  });

  it('eggs in hot water (statements of Çengel; answers by the series, one of them against 16.4 min as published)', () => {
    report('TB3', 'egg 8 → 70 °C in 97 °C', 17.71, sphereMin(0.6, 0.14e-6, 0.0275, 1400, 8, 70, 97), 'min');
    const second = sphereMin(0.607, 0.146e-6, 0.0275, 800, 8, 60, 100);
    report(
      'TB4',
      'egg 8 → 60 °C in 100 °C (published with Bi on V/A, which the table does not use)',
      16.4,
      second,
      'min',
    );
    report(
      'TB5',
      'egg 4.3 → 74 °C in 100 °C',
      18.41,
      sphereMin(0.607, 0.146e-6, 0.0275, 800, 4.3, 74, 100),
      'min',
    );
    expect(Math.abs(second - 13.98)).toBeLessThan(0.02);
    report('TB6', 'beef slab of 10 cm (Çengel 4-104)', 'not readable', '–', '');
  });

  it('a tin of sausage in the autoclave: 99.1 °C after two hours (statement of Earle & Earle from memory, answer derived)', () => {
    const stage: HeatStage = {
      kind: 'steam',
      end: { when: 'time', minutes: 120 },
      air: { tempC: 116, filmWm2K: 1200 },
    };
    const shape = { kind: 'cylinder', diameterMm: 100, lengthMm: 300 } as const;
    const run = simulate({ shape, material: constantMaterial(0.48, 1070, 3350), startC: 21 }, [stage]);
    const core = run === null ? Number.NaN : valueAt(run.timesMin, run.coreC, 120);
    report('TB7', 'centre after 2 h', 99.1, core, '°C');
    expect(Math.abs(core - 99.1)).toBeLessThan(0.15);
  });

  it('the heat to freeze lean beef from 10 to −18 °C: 323 kJ/kg printed (Earle & Earle)', () => {
    const beef: Composition = { water: 0.75, protein: 0.21, fat: 0.03, carbohydrate: 0, fibre: 0, ash: 0.01 };
    const chen = (chenEnthalpyJkg(beef, -2, 10) - chenEnthalpyJkg(beef, -2, -18)) / 1000;
    const parts = foodMaterial(beef, { freezingC: -2 });
    const own = parts === null ? Number.NaN : (parts.enthalpyJkg(10) - parts.enthalpyJkg(-18)) / 1000;
    expect(
      Math.abs(report('TB8', 'enthalpy by Chen (the book freezes all its water)', 323, chen, 'kJ/kg')),
    ).toBeLessThan(0.2);
    expect(Math.abs(report('TB8', 'enthalpy from the parts', 323, own, 'kJ/kg'))).toBeLessThan(0.2);
  });

  it('Plank on a 5 cm steak: 14.0 h with 278 kJ/kg (statement confirmed, answer derived)', () => {
    const frozen = plankMaterial();
    const stage: HeatStage = {
      kind: 'freeze',
      end: { when: 'time', minutes: 1500 },
      air: { tempC: -30, filmWm2K: 5 },
    };
    const run = simulate({ shape: { kind: 'slab', thicknessMm: 50 }, material: frozen, startC: -1.7 }, [
      stage,
    ]);
    const hours = run === null ? Number.NaN : timeTo(run.timesMin, run.hottestC, -2, 'down') / 60;
    expect(Math.abs(report('TB9', 'freezing time, sensible heat left out', 14, hours, 'h'))).toBeLessThan(
      0.03,
    );
  });
});

/** Plank's own material: all latent heat at −1.75 °C, next to no heat besides. */
function plankMaterial(): Material {
  const latent = 278_000;
  const slight = 20;
  const melted = (tempC: number) => Math.min(1, Math.max(0, (tempC + 1.85) / 0.1));
  return {
    densityKgM3: 970,
    enthalpyJkg: (tempC) => latent * melted(tempC) + slight * (tempC + 50),
    conductivityWmK: () => 1.1,
    cornersC: [-1.85, -1.75],
  };
}

describe('measured cooling of cooked meat', () => {
  /** Twenty per cent either way is the honest limit of any such prediction. */
  const HONEST = 0.21;

  it('a beef slab of 50 mm (James & James 2002, Table 16.7)', () => {
    const slab: HeatShape = { kind: 'rectangular', lengthMm: 134, widthMm: 134, depthMm: 50 };
    expect(
      Math.abs(report('P1', 'water 0 °C, 70 → 10 °C, film 300', 1.2, coolHours(slab, 70, 0, 300, 10), 'h')),
    ).toBeLessThan(HONEST);
    report('P1', 'water 0 °C, 50 → 10 °C (from an even 50)', 1.0, coolHours(slab, 50, 0, 300, 10), 'h');
    expect(
      Math.abs(
        report('P1', 'air 0 °C, 70 → 10 °C, film 38 (fitted)', 2.1, coolHours(slab, 70, 0, 38, 10), 'h'),
      ),
    ).toBeLessThan(0.05);
    report('P1', 'air 0 °C, 50 → 10 °C, film 38', 1.7, coolHours(slab, 50, 0, 38, 10), 'h');
  });

  it('a rolled forequarter of 110 mm (James & James 2002, Table 16.7)', () => {
    const roll: HeatShape = { kind: 'cylinder', diameterMm: 110, lengthMm: 268 };
    expect(
      Math.abs(report('P2', 'water 0 °C, 70 → 10 °C, film 300', 3.6, coolHours(roll, 70, 0, 300, 10), 'h')),
    ).toBeLessThan(HONEST);
    report('P2', 'water 0 °C, 50 → 10 °C', 3.1, coolHours(roll, 50, 0, 300, 10), 'h');
    expect(
      Math.abs(
        report('P2', 'air 0 °C, 70 → 10 °C, film 21 (fitted)', 5.1, coolHours(roll, 70, 0, 21, 10), 'h'),
      ),
    ).toBeLessThan(0.05);
    report('P2', 'air 0 °C, 50 → 10 °C, film 21', 4.4, coolHours(roll, 50, 0, 21, 10), 'h');
  });

  it('vacuum-packed roasts, hams, bacon and blocks, as far as they are described', () => {
    // The roast is an ellipsoid of 3.5 L; here an upright oval of that volume, in the proportions of the pack.
    const roast: HeatShape = { kind: 'oval', lengthMm: 286, widthMm: 139, depthMm: 113 };
    report(
      'P3',
      'roasts 3.75 kg, water 1 °C, 70 → 8 °C, film 200',
      6.9,
      coolHours(roast, 70, 1, 200, 8),
      'h',
    );
    report('P3', 'air 1 °C 2 m/s, 70 → 8 °C, film 30', 6.1, coolHours(roast, 70, 1, 30, 8), 'h');
    report('P3', 'air 1 °C 1 m/s, 70 → 8 °C, film 20', 8.1, coolHours(roast, 70, 1, 20, 8), 'h');
    report('P4', 'hams 7 kg in moulds, air −2 °C, 70 → 5 °C', 9, 'no dimensions', 'h');
    const bacon: HeatShape = { kind: 'cylinder', diameterMm: 114, lengthMm: 420 };
    report('P5', 'bacon joints, air 16 °C, 76 → 50 °C, film 10', 1.9, coolHours(bacon, 76, 16, 10, 50), 'h');
    report('P5', 'bacon joints, air 16 °C, 71 → 50 °C, film 10', 2.6, coolHours(bacon, 71, 16, 10, 50), 'h');
    report('P5', 'bacon joints, air 16 °C, 76 → 50 °C, film 12', 2.7, coolHours(bacon, 76, 16, 12, 50), 'h');
    report('P7', 'joints over 5 kg, 74 → 10 °C, water', 5, 'no dimensions', 'h');
    report('P8', 'block of 8 kg, blast 3 m/s, 74 → 10 °C', 8.33, 'no dimensions', 'h');
    // Reported only: dimensions and air are not known well enough to hold a tolerance. None may fail to compute.
    const modelled = rows.filter(
      ([id, , , ours]) => ['P3', 'P5'].includes(String(id)) && ours !== 'no dimensions',
    );
    expect(modelled.map(([, , , ours]) => Number.isFinite(Number(ours)))).toEqual(Array(6).fill(true));
  });

  it('a sausage of 50 mm in steam at 80 °C: 74 °C in the core after 47 min (Meat Technology 2025)', () => {
    const stage: HeatStage = {
      kind: 'steam',
      end: { when: 'core-reaches', tempC: 74, mostMin: 200 },
      air: { tempC: 80, filmWm2K: 300 },
    };
    const shape = { kind: 'cylinder', diameterMm: 50, lengthMm: 107 } as const;
    const run = simulate({ shape, material: constantMaterial(0.45, 1050, 3500), startC: 12 }, [stage]);
    const minutes = run?.stages[0]?.timeMin ?? Number.NaN;
    expect(
      Math.abs(report('P6', 'to 74 °C from an assumed 12 °C, film 300', 47, minutes, 'min')),
    ).toBeLessThan(HONEST);
    expect(Math.abs(minutes - 46.7)).toBeLessThan(0.4); // derived elsewhere with the same inputs
  });
});

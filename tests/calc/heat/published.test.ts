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
import type { PublishedCheck } from '../../../content/checks/check.ts';
import { listsItsChecks, published } from '../../tools/published.ts';
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
  theirs: number | string,
  ours: number | string,
  unit: string,
): number {
  const error = typeof theirs === 'number' && typeof ours === 'number' ? ours / theirs - 1 : Number.NaN;
  const shown = (value: number | string) => (typeof value === 'number' ? value.toFixed(2) : value);
  rows.push([
    id,
    what,
    shown(theirs),
    shown(ours),
    unit,
    Number.isNaN(error) ? '–' : `${(100 * error).toFixed(1)} %`,
  ]);
  return error;
}

type Origin = Pick<PublishedCheck, 'cited' | 'kind' | 'sourceId'>;
const CENGEL: Origin = { cited: 'Çengel 2008', kind: 'printed' };
const EARLE: Origin = { cited: 'Earle & Earle', kind: 'printed', sourceId: 'earle-unit-operations' };
const JAMES: Origin = {
  cited: 'James & James 2002, Table 16.7 and the text around it',
  kind: 'measured',
  sourceId: 'james-meat-refrigeration-2002',
};

/**
 * The same for a figure that is printed or was measured: held to a share of it, and kept for the page "How we know".
 * A share of null is told only, with the reason.
 */
function against(
  origin: Origin,
  [id, what, theirs, ours, unit]: [string, string, number, number, string],
  share: number | null,
  note?: string,
): void {
  report(id, what, theirs, ours, unit);
  published({ ...origin, what, theirs, ours, unit, within: share === null ? null : share * theirs, note });
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
    against(CENGEL, ['TB2', 'Steaks of 2 cm until their surface is at 2 °C', 93.1, minutes, 'min'], 0.005);
  });

  it('eggs in hot water (statements of Çengel; answers by the series, one of them against 16.4 min as published)', () => {
    report('TB3', 'egg 8 → 70 °C in 97 °C', 17.71, sphereMin(0.6, 0.14e-6, 0.0275, 1400, 8, 70, 97), 'min');
    const second = sphereMin(0.607, 0.146e-6, 0.0275, 800, 8, 60, 100);
    against(
      { ...CENGEL, cited: 'Answer to a statement of Çengel' },
      ['TB4', 'Egg from 8 to 60 °C in water of 100 °C', 16.4, second, 'min'],
      null,
      'The printed answer mixes two definitions of the Biot number. Ours follows the series.',
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
    const note = 'The book freezes all its water; in meat a part of it does not freeze.';
    const beefTo = 'Heat to freeze lean beef from 10 to −18 °C';
    against(EARLE, ['TB8', `${beefTo}, enthalpy by Chen`, 323, chen, 'kJ/kg'], 0.2, note);
    against(EARLE, ['TB8', `${beefTo}, enthalpy from its parts`, 323, own, 'kJ/kg'], 0.2, note);
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
  const FITTED = 'The film coefficient of the air was chosen to meet the case from 70 °C.';
  const EVEN = 'Not held: we start from an even temperature, the piece did not.';
  const SKETCHED = 'Not held: size and air of the trial are not described well enough.';

  it('a beef slab of 50 mm (James & James 2002, Table 16.7)', () => {
    const slab: HeatShape = { kind: 'rectangular', lengthMm: 134, widthMm: 134, depthMm: 50 };
    const cooled = (where: string, from: number) =>
      `Beef slab of 50 mm, ${where} at 0 °C, from ${from} to 10 °C`;
    const to10 = (from: number, film: number) => coolHours(slab, from, 0, film, 10);
    against(JAMES, ['P1', cooled('water', 70), 1.2, to10(70, 300), 'h'], HONEST);
    against(JAMES, ['P1', cooled('water', 50), 1.0, to10(50, 300), 'h'], null, EVEN);
    against(JAMES, ['P1', cooled('air', 70), 2.1, to10(70, 38), 'h'], 0.05, FITTED);
    against(JAMES, ['P1', cooled('air', 50), 1.7, to10(50, 38), 'h'], null, `${FITTED} ${EVEN}`);
  });

  it('a rolled forequarter of 110 mm (James & James 2002, Table 16.7)', () => {
    const roll: HeatShape = { kind: 'cylinder', diameterMm: 110, lengthMm: 268 };
    const cooled = (where: string, from: number) =>
      `Rolled forequarter of 110 mm, ${where} at 0 °C, from ${from} to 10 °C`;
    const to10 = (from: number, film: number) => coolHours(roll, from, 0, film, 10);
    against(JAMES, ['P2', cooled('water', 70), 3.6, to10(70, 300), 'h'], HONEST);
    against(JAMES, ['P2', cooled('water', 50), 3.1, to10(50, 300), 'h'], null, EVEN);
    against(JAMES, ['P2', cooled('air', 70), 5.1, to10(70, 21), 'h'], 0.05, FITTED);
    against(JAMES, ['P2', cooled('air', 50), 4.4, to10(50, 21), 'h'], null, `${FITTED} ${EVEN}`);
  });

  it('vacuum-packed roasts, hams, bacon and blocks, as far as they are described', () => {
    // The roast is an ellipsoid of 3.5 L; here an upright oval of that volume, in the proportions of the pack.
    const roast: HeatShape = { kind: 'oval', lengthMm: 286, widthMm: 139, depthMm: 113 };
    const roasts = 'Vacuum-packed roasts of 3.75 kg, from 70 to 8 °C';
    for (const [where, airC, film, hours] of [
      ['water at 1 °C', 1, 200, 6.9],
      ['air at 1 °C, 2 m/s', 1, 30, 6.1],
      ['air at 1 °C, 1 m/s', 1, 20, 8.1],
    ] as const)
      against(
        JAMES,
        ['P3', `${roasts}, ${where}`, hours, coolHours(roast, 70, airC, film, 8), 'h'],
        null,
        SKETCHED,
      );
    report('P4', 'hams 7 kg in moulds, air −2 °C, 70 → 5 °C', 9, 'no dimensions', 'h');
    const bacon: HeatShape = { kind: 'cylinder', diameterMm: 114, lengthMm: 420 };
    for (const [from, film, hours] of [
      [76, 10, 1.9],
      [71, 10, 2.6],
      [76, 12, 2.7],
    ] as const)
      against(
        JAMES,
        [
          'P5',
          `Bacon joints in air at 16 °C, from ${from} to 50 °C`,
          hours,
          coolHours(bacon, from, 16, film, 50),
          'h',
        ],
        null,
        `${SKETCHED} Film taken: ${film} W/m²K.`,
      );
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
    against(
      { cited: 'Meat Technology 2025', kind: 'measured' },
      ['P6', 'Sausage of 50 mm in steam at 80 °C, to 74 °C in the core', 47, minutes, 'min'],
      HONEST,
      'The start, 12 °C, is assumed.',
    );
    expect(Math.abs(minutes - 46.7)).toBeLessThan(0.4); // derived elsewhere with the same inputs
  });
});

listsItsChecks('heat');

import { constantMaterial, type HeatStage, simulate } from '@larderwright/calc/heat';
import { afterAll, describe, expect, it } from 'vitest';
import { timeTo, valueAt } from './curve.ts';
import { printTable } from './print.ts';
import { CHILLS, COOKS, type CookReference } from './references.ts';

const food = constantMaterial(0.45, 1050, 3500);
const startC = 4;
const DEPTH_MM: Readonly<Record<string, number>> = {
  rectangular: 75,
  tapered: 75,
  'half-cylinder': 45,
  cylinder: 70,
};

/** Tolerances asked: core 0.15 °C, times 0.3 min or 0.5 %, whichever is wider. */
const CORE_C = 0.15;
const timeTolerance = (minutes: number) => Math.max(0.3, 0.005 * minutes);

/** What surrounds the body in each reference. */
const SURROUNDINGS: Readonly<Record<string, Pick<HeatStage, 'air' | 'water' | 'faces'>>> = {
  N05: { air: { tempC: { fromC: 55, toC: 88, tauMin: 40 }, filmWm2K: 300 } },
  N06: { air: { tempC: { fromC: 55, toC: 88, tauMin: 13.333 }, filmWm2K: 300 } },
  N11: { air: { tempC: 85, filmWm2K: 300 }, faces: { top: { tempC: 100, filmWm2K: 25 } } },
  N12: { air: { tempC: 85, filmWm2K: 100 } },
  N13: { air: { tempC: 85, filmWm2K: 1e6 } },
  N14: {
    air: { tempC: 100, filmWm2K: 25 },
    water: { levelMm: 37.5, filmWm2K: 300, bath: { kind: 'course', tempC: 85 } },
  },
  N18: { air: { tempC: 85, filmWm2K: 300 }, faces: { top: { tempC: 150, filmWm2K: 10 } } },
};

function cookOf({ id, shape }: CookReference) {
  const surroundings = SURROUNDINGS[id] ?? { air: { tempC: 85, filmWm2K: 300 } };
  const stage: HeatStage = { kind: 'bath', end: { when: 'time', minutes: 140 }, ...surroundings };
  const run = simulate({ shape, material: food, startC }, [stage], { everyMin: 0.5 });
  if (run === null) throw new Error('a sound problem was refused');
  return run;
}

describe('the numeric references of cooking', () => {
  const rows: (string | number)[][] = [];
  afterAll(() =>
    printTable(
      'Core against numeric references: model minus reference',
      ['id', 'max core °C', 'max centre °C', 'max mean °C', 'to 68 min', 'to 71 min', 'height'],
      rows,
    ),
  );

  it.each(COOKS)('$id ($what) are met: core within 0.15 °C, times within 0.3 min or 0.5 %', (reference) => {
    const { timesMin, coreC, centreC, meanC, coreHeightMm } = cookOf(reference);
    const worst = (curve: Float64Array, wanted: Readonly<Record<number, number>> = {}) =>
      Object.entries(wanted)
        .map(([minute, value]) => valueAt(timesMin, curve, Number(minute)) - value)
        .reduce((most, error) => (Math.abs(error) > Math.abs(most) ? error : most), 0);
    const errors = [
      worst(coreC, reference.core),
      worst(centreC, reference.centre),
      worst(meanC, reference.mean),
    ];
    const times = Object.entries(reference.minTo).map(([tempC, minutes]) => ({
      minutes,
      error: timeTo(timesMin, coreC, Number(tempC)) - minutes,
    }));
    const height = valueAt(timesMin, coreHeightMm, 60) / (DEPTH_MM[reference.shape.kind] ?? Number.NaN);
    rows.push([
      reference.id,
      ...errors.map((error) => error.toFixed(3)),
      ...times.map(({ error }) => error.toFixed(3)),
      `${height.toFixed(4)} (${reference.coreShare ?? '–'})`,
    ]);
    for (const error of errors) expect(Math.abs(error)).toBeLessThan(CORE_C);
    for (const { minutes, error } of times) expect(Math.abs(error)).toBeLessThan(timeTolerance(minutes));
    if (reference.coreShare !== undefined) expect(Math.abs(height - reference.coreShare)).toBeLessThan(0.005);
  });
});

describe('the numeric references of chilling', () => {
  const rows: (string | number)[][] = [];
  afterAll(() =>
    printTable(
      'Chilling against numeric references: model minus reference',
      [
        'id',
        'rest centre °C',
        'rest mean °C',
        'peak °C',
        'peak at min',
        'to 55 min',
        'to 21 min',
        'to 5 min',
      ],
      rows,
    ),
  );

  it.each(CHILLS)('$id ($what) are met, the whole field handed on from the cook', (reference) => {
    const [restMin, restC, restFilm] = reference.rest;
    const [chillC, chillFilm] = reference.chill;
    const run = simulate(
      { shape: reference.shape, material: food, startC },
      [
        {
          kind: 'bath',
          end: { when: 'core-reaches', tempC: reference.stopC, mostMin: 300 },
          air: { tempC: 85, filmWm2K: 300 },
        },
        { kind: 'rest', end: { when: 'time', minutes: restMin }, air: { tempC: restC, filmWm2K: restFilm } },
        {
          kind: 'refrigerate',
          end: { when: 'time', minutes: 600 },
          air: { tempC: chillC, filmWm2K: chillFilm },
        },
      ],
      { everyMin: 0.5 },
    );
    if (run === null) throw new Error('a sound problem was refused');
    const { timesMin, centreC, meanC, stages } = run;
    const pulled = stages[0]?.timeMin ?? Number.NaN;
    const restEnd = [
      valueAt(timesMin, centreC, pulled + restMin) - reference.restEnd.centreC,
      valueAt(timesMin, meanC, pulled + restMin) - reference.restEnd.meanC,
    ];
    const peak = Math.max(...centreC);
    const peakAt = (timesMin[centreC.indexOf(peak)] ?? Number.NaN) - pulled;
    const times = Object.entries(reference.minTo)
      .sort(([a], [b]) => Number(b) - Number(a))
      .map(([tempC, minutes]) => ({
        minutes,
        error:
          timeTo(timesMin, centreC, Number(tempC), 'down', pulled + reference.peak.atMin) - pulled - minutes,
      }));
    rows.push([
      reference.id,
      ...restEnd.map((error) => error.toFixed(3)),
      (peak - reference.peak.centreC).toFixed(3),
      (peakAt - reference.peak.atMin).toFixed(2),
      ...times.map(({ error }) => error.toFixed(2)),
    ]);
    for (const error of [...restEnd, peak - reference.peak.centreC])
      expect(Math.abs(error)).toBeLessThan(CORE_C);
    expect(Math.abs(peakAt - reference.peak.atMin)).toBeLessThan(1);
    for (const { minutes, error } of times) expect(Math.abs(error)).toBeLessThan(timeTolerance(minutes));
    // What went in and came out again leaves little; a thousandth of what the cook put in is asked for.
    const volumeM3 =
      run.network.solid.copies * run.network.solid.volumeM3.reduce((sum, part) => sum + part, 0);
    const cookedJ = volumeM3 * 1050 * 3500 * (reference.stopC - startC);
    expect(Math.abs(run.energy.inJ - run.energy.riseJ)).toBeLessThan(1e-3 * cookedJ);
  });
});

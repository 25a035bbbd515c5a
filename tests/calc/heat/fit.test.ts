import {
  adjustStage,
  airStage,
  type BatchThermal,
  bathStage,
  constantMaterial,
  coreOfRun,
  fatLining,
  fitToReadings,
  foodMaterial,
  forecast,
  type HeatStage,
  mouldLayers,
  ovenPan,
  pullAtC,
  type Reading,
  simulate,
  waterStage,
} from '@larderwright/calc/heat';
import { describe, expect, it } from 'vitest';

const material =
  foodMaterial({ water: 0.575, protein: 0.16, fat: 0.245, carbohydrate: 0.005, fibre: 0, ash: 0.015 }) ??
  constantMaterial(0.45, 1050, 3500);
const batch: BatchThermal = {
  shape: { kind: 'rectangular', lengthMm: 240, widthMm: 100, depthMm: 75 },
  material,
  startC: 5,
  layers: mouldLayers({ wall: 'cast-iron', inside: [fatLining(2)] }),
};
const pan = ovenPan({ waterG: 3000, covered: false, mouldPlanMm2: 26_000 });
const end = { when: 'core-reaches', tempC: 68, mostMin: 500 } as const;
const oven: HeatStage = bathStage(150, 50, 50, pan, end);
const kettle: HeatStage = waterStage('poach', 80, 90, 60, end);
const rest: HeatStage = airStage('rest', 20, { when: 'time', minutes: 40 });

/** Even numbers in 0–1 from a seed: the minimal standard generator of Park and Miller. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

/** Readings every few minutes of a kitchen that differs from what was planned, with the probe's scatter. */
function kitchen(
  stage: HeatStage,
  actual: Parameters<typeof adjustStage>[1],
  toMin: number,
  scatterC: number,
) {
  const run = simulate(batch, [adjustStage({ ...stage, end: { when: 'time', minutes: 400 } }, actual)]);
  if (run === null) throw new Error('a sound problem was refused');
  const random = seeded(7);
  const readings: Reading[] = [];
  for (let timeMin = 5; timeMin <= toMin; timeMin += 2) {
    readings.push({ timeMin, tempC: coreOfRun(run, timeMin) + scatterC * (2 * random() - 1) });
  }
  const finish = run.timesMin[run.coreC.findIndex((core) => core >= 68)] ?? Number.NaN;
  return { readings, finish };
}

/** When the core is at 68 °C in a kitchen as it is believed to be. */
function finishOf(stage: HeatStage, adjustment: Parameters<typeof adjustStage>[1]): number {
  return simulate(batch, [adjustStage(stage, adjustment)])?.stages[0]?.timeMin ?? Number.NaN;
}

describe('fitting the kitchen to readings of the core', () => {
  it.each([
    [
      'an oven that heats its pan half as well again',
      oven,
      { filmFactor: 1, mediumShiftC: 0, heatingFactor: 1.5 },
    ],
    ['a kettle 3 °C colder than set', kettle, { filmFactor: 1, mediumShiftC: -3, heatingFactor: 1 }],
  ] as const)('brings the finish nearer than the plan: %s', (_, stage, actual) => {
    const { readings, finish } = kitchen(stage, actual, 85, 0.3);
    const fit = fitToReadings(batch, [stage], readings);
    if (fit === null) throw new Error('nothing was fitted');
    const planned = finishOf(stage, { filmFactor: 1, mediumShiftC: 0, heatingFactor: 1 });
    const fitted = finishOf(stage, fit.adjustment);
    expect(Math.abs(fitted - finish)).toBeLessThan(0.4 * Math.abs(planned - finish));
    expect(fit.residualC).toBeLessThan(0.5);
    expect(fit.impossible).toEqual([]);
  });

  it('leaves out of the fit, and names, a probe that fell out and one read in the wrong unit', () => {
    const { readings } = kitchen(kettle, { filmFactor: 1, mediumShiftC: 2, heatingFactor: 1 }, 85, 0.2);
    const clean = fitToReadings(batch, [kettle], readings);
    const spoilt = readings.map((reading, i) => {
      if (i === 15) return { ...reading, tempC: 78 };
      if (i === 30) return { ...reading, tempC: reading.tempC * 1.8 + 32 };
      return reading;
    });
    const fit = fitToReadings(batch, [kettle], spoilt);
    expect([...(fit?.impossible ?? [])].sort((a, b) => a - b)).toEqual([15, 30]);
    expect(
      Math.abs((fit?.adjustment.mediumShiftC ?? 0) - (clean?.adjustment.mediumShiftC ?? 9)),
    ).toBeLessThan(0.3);
  });

  it('learns nothing from no readings, and skips readings that are no numbers', () => {
    expect(fitToReadings(batch, [kettle], [])).toBeNull();
    expect(fitToReadings(batch, [kettle], [{ timeMin: Number.NaN, tempC: 40 }])).toBeNull();
    const fit = fitToReadings(
      batch,
      [kettle],
      [
        { timeMin: 30, tempC: 14 },
        { timeMin: 40, tempC: Number.NaN },
      ],
    );
    expect(fit?.impossible).toEqual([1]);
  });
});

/** Runs a forecast to its end. */
function finished(generator: ReturnType<typeof forecast>) {
  for (;;) {
    const step = generator.next();
    if (step.done) return step.value;
  }
}

describe('the forecast', () => {
  it('gives bands that the readings narrow, and that hold the truth', () => {
    const actual = { filmFactor: 1, mediumShiftC: -2, heatingFactor: 1 };
    const { readings, finish } = kitchen(kettle, actual, 80, 0.3);
    const before = finished(forecast(batch, [kettle, rest], null, 40, seeded(1)));
    const fit = fitToReadings(batch, [kettle, rest], readings);
    const after = finished(forecast(batch, [kettle, rest], fit, 40, seeded(1)));
    const wide = before?.stageEndMin[0];
    const narrow = after?.stageEndMin[0];
    if (wide === undefined || narrow === undefined) throw new Error('no forecast was made');
    expect(narrow.high - narrow.low).toBeLessThan(0.5 * (wide.high - wide.low));
    expect(finish).toBeGreaterThan(narrow.low - 1);
    expect(finish).toBeLessThan(narrow.high + 1);
    expect(wide.low).toBeLessThan(wide.middle);
    expect(after?.peakC.low).toBeGreaterThan(68);
  });

  it('tells its progress and can be stopped', () => {
    const generator = forecast(batch, [kettle], null, 10, seeded(3));
    expect(generator.next().value).toBeCloseTo(0.1, 9);
    expect(generator.return(null).done).toBe(true);
  });

  it('names the core at which to pull so that carry-over ends at the wanted peak', () => {
    const pull = pullAtC(batch, [kettle, rest], 70) ?? Number.NaN;
    expect(pull).toBeLessThan(69.5);
    const cook: HeatStage = { ...kettle, end: { when: 'core-reaches', tempC: pull, mostMin: 500 } };
    const run = simulate(batch, [cook, rest]);
    expect(Math.abs(Math.max(...(run?.centreC ?? [])) - 70)).toBeLessThan(0.2);
  });
});

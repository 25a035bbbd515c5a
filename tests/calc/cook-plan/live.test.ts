import { type LiveReading, liveForecast, newChillLeg } from '@larderwright/calc/cook-plan';
import { adjustStage, coreOfRun, simulate } from '@larderwright/calc/heat';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';
import { thermalOf } from '../../../calc/cook-plan/solve.ts';
import { contextOf, LOAF, mm, mouldOf, planTo68, problemOf, seeded, solved } from './plans.ts';

const slice = planTo68({ level: mm(45), chill: [newChillLeg('cold', 'blast')] });
const problem = problemOf(slice, contextOf(mouldOf(LOAF), { coolRuleSetId: 'us-food-code' }));

/** An oven that heats its pan less than ours, and a bath that gives its heat away more slowly. */
const KITCHEN = { filmFactor: 0.8, heatingFactor: 0.7, mediumShiftC: 0 };

function actual() {
  const batch = thermalOf(problem);
  const stages = problem.stages.map(({ heat }) => adjustStage(heat, KITCHEN));
  const run = batch && simulate(batch, stages.slice(0, 1));
  if (run === null) throw new Error('refused');
  return run;
}
const run = actual();
const endMin = run.stages[0]?.timeMin ?? 0;

/** Readings every five minutes up to a time, as the probe of that kitchen shows them. */
function readingsTo(lastMin: number): LiveReading[] {
  return Array.from({ length: Math.floor(lastMin / 5) + 1 }, (_, i) => ({
    timeMin: 5 * i,
    tempC: Math.round(10 * coreOfRun(run, 5 * i)) / 10,
  }));
}

function forecastOf(readings: readonly LiveReading[], heatEndMin: number | null = null, draws = 12) {
  const steps = liveForecast(
    { problem, readings, heatEndMin },
    { draws, random: seeded(3), chillMostMin: 300 },
  );
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

describe('a cook that is on', () => {
  it('is forecast nearer to its end than the plan was, and within its band', () => {
    const plan = solved(problem).prediction.targetMin ?? 0;
    const live = forecastOf(readingsTo(70));
    const forecast = live?.outcome.prediction.targetMin ?? 0;
    expect(Math.abs(forecast - endMin)).toBeLessThan(Math.abs(plan - endMin) / 3);
    expect(live?.bands.targetMin.low).toBeLessThan(endMin);
    expect(live?.bands.targetMin.high).toBeGreaterThan(endMin);
    expect(live?.residualC).toBeLessThan(0.7);
    expect(live?.used).toBe(15);
  });

  it('is surer the longer it is read, and never surer than a fifth of what lies ahead', () => {
    const width = (lastMin: number) => {
      const band = forecastOf(readingsTo(lastMin))?.bands.targetMin;
      return (band?.high ?? 0) - (band?.low ?? 0);
    };
    expect(width(90)).toBeLessThan(width(40));
    expect(width(90)).toBeGreaterThanOrEqual(0.39 * (endMin - 92));
  });

  it('keeps a reading that cannot be out of the fit, names it, and leaves the others alone', () => {
    const slipped = readingsTo(70).map((reading, i) =>
      i === 9 ? { ...reading, tempC: reading.tempC + 25 } : reading,
    );
    const live = forecastOf(slipped);
    expect(live?.unlikely).toEqual([9]);
    expect(Math.abs((live?.outcome.prediction.targetMin ?? 0) - endMin)).toBeLessThan(4);
  });

  it('ends the heat when it was ended, and reads the core then, not at the target', () => {
    const live = forecastOf(readingsTo(60), 60);
    expect(live?.outcome.prediction.heatEndMin).toBeCloseTo(60, 6);
    expect(live?.outcome.prediction.targetMin).toBeNull();
  });

  it('says nothing without a reading', () => {
    expect(forecastOf([])).toBeNull();
    expect(forecastOf([{ timeMin: Number.NaN, tempC: 20 }])).toBeNull();
  });

  it('does not let the bath teach it how cold the chiller is', () => {
    // The kitchen's film is learnt low; the blast chiller keeps the plan's own: its course from the same field differs
    // only by that field.
    const live = forecastOf(readingsTo(70));
    const batch = thermalOf(problem);
    const own = problem.stages.map(({ kind, heat }) =>
      kind === 'cook' ? adjustStage(heat, live?.kitchen ?? KITCHEN) : heat,
    );
    const again = batch && simulate(batch, own);
    expect(live?.kitchen.filmFactor).toBeLessThan(1);
    expect(live?.outcome.prediction.endMin).toBeCloseTo(again?.stages.at(-1)?.timeMin ?? 0, 6);
  });

  it('holds a hold that is planned', () => {
    const held = problemOf({ ...slice, hold: enteredEntry('10', 'min') }, contextOf(mouldOf(LOAF)));
    const steps = liveForecast(
      { problem: held, readings: readingsTo(60), heatEndMin: null },
      { draws: 2, random: seeded(3) },
    );
    let step = steps.next();
    while (!step.done) step = steps.next();
    const prediction = step.value?.outcome.prediction;
    expect((prediction?.heatEndMin ?? 0) - (prediction?.targetMin ?? 0)).toBeCloseTo(10, 3);
  });
});

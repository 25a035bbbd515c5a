import { type PlanOutcome, type PlanProblem, solvePlan } from '@larderwright/calc/cook-plan';
import { type BatchThermal, type HeatStage, simulate, type solidOfShape } from '@larderwright/calc/heat';
import fc from 'fast-check';
import type { Named } from './of-type.ts';

/** What a function needs beside its types. */
export interface Own {
  /** All arguments at once, where they must fit together. */
  readonly given?: (named: Named) => fc.Arbitrary<unknown[]>;
  /** Parameters by name, where the type says less than the docstring. */
  readonly parameters?: (named: Named) => Named;
  /** Fewer where one call takes long. */
  readonly runs?: number;
  /** Where an endless number is an answer, and where NaN stands for "there is none": the docstring says so. */
  readonly unbounded?: boolean;
  readonly blank?: RegExp;
}

const above0 = (max: number) => fc.double({ min: 1e-6, max, noNaN: true });
const from0 = (max: number) => fc.oneof(fc.constant(0), above0(max));
const drawn = (named: Named, name: string) => {
  const values = named[name];
  if (!values) throw new Error(`named.ts has no ${name}`);
  return values;
};
/** Curves and readings come in the order of time; whoever hands them over has sorted them. */
const inOrder =
  (parameter: string, list: 'curve' | 'readings') =>
  (named: Named): Named => ({ [parameter]: drawn(named, list) });
let solved: PlanOutcome | undefined;
/** One plan worked out, the same for all that look at it. */
const outcomeOf = (named: Named) =>
  drawn(named, 'PlanProblem').map((problem) => {
    solved ??= solvePlan(problem as PlanProblem, { tier: 'preview' }) ?? undefined;
    if (!solved) throw new Error('The first plan has no outcome');
    return solved;
  });
const bands = (named: Named): Named => ({
  __1: fc.record({
    draws: fc.constantFrom(1, 2),
    random: drawn(named, 'random'),
    chillMostMin: fc.constant(120),
  }),
});
const withChance = (named: Named): Named => ({
  random: drawn(named, 'random'),
  draws: fc.constantFrom(1, 2),
});
/** Water enough to freeze, and a freezing point below 0 °C. */
const frozen = {
  waterFraction: fc.double({ min: 0.5, max: 0.9, noNaN: true }),
  freezingC: fc.double({ min: -8, max: -0.1, noNaN: true }),
  tempC: fc.double({ min: -40, max: 150, noNaN: true }),
};
const shares = {
  share: fc.double({ min: 0, max: 1, noNaN: true }),
  continuous: above0(5),
  dispersed: above0(5),
};

export const OWN: Readonly<Record<string, Own>> = {
  'chill-budget.minutesToWarm': { unbounded: true },
  'chill-budget.temperInFreezer': { runs: 4 },
  'cook-plan.cookPlanStage': {
    runs: 40,
    blank: /\.bathC\./,
    parameters: (named) => ({ outcome: outcomeOf(named) }),
  },
  'cook-plan.depthRows': { runs: 1 },
  'cook-plan.lastMomentToChill': { runs: 3 },
  'cook-plan.liveForecast': { runs: 1, unbounded: true, blank: /\.bathC\./, parameters: bands },
  'cook-plan.planBands': { runs: 1, unbounded: true, parameters: bands },
  'cook-plan.pullForCarryOver': { runs: 3 },
  'cook-plan.sectionAt': {
    runs: 30,
    parameters: (named) => ({
      net: outcomeOf(named).map(({ section }) => section),
      tempC: outcomeOf(named).map(({ pictures }) => pictures[0]?.tempC ?? new Float32Array()),
    }),
  },
  'cook-plan.solvePlan': {
    runs: 4,
    blank: /\.bathC\./,
    parameters: () => ({ options: fc.record({ tier: fc.constantFrom('preview', 'exact') }) }),
  },
  'growth.grow': {
    parameters: () => ({
      from: fc.record({ log10Count: fc.double({ min: -9, max: 10, noNaN: true }), work: from0(1e9) }),
      rateIntegral: from0(1e6),
    }),
  },
  'growth.lagH': { unbounded: true, parameters: () => ({ work: from0(1e6), ratePerH: from0(1000) }) },
  'growth.logOfRelativeGrowth': { parameters: () => ({ relative: above0(1e9) }) },
  'growth.physiologicalState': { unbounded: true, parameters: () => ({ work: from0(1e6) }) },
  'growth.productRate': { unbounded: true },
  'growth.rateIntegral': {
    parameters: (named) => ({
      points: drawn(named, 'curve'),
      ratePerH: above0(3).map((perH) => (tempC: number) => Math.max(0, perH * tempC)),
    }),
  },
  'growth.readyFraction': { parameters: () => ({ work: from0(1e6) }) },
  'growth.setGrowth': { parameters: inOrder('points', 'curve') },
  'heat.apparentHeatJkgK': { parameters: () => frozen },
  'heat.changTaoEnthalpyJkg': { parameters: () => frozen },
  'heat.chenEnthalpyJkg': { parameters: () => frozen },
  'heat.iceFraction': { parameters: () => frozen },
  'heat.iceFractionTchigeov': { parameters: () => frozen },
  'heat.evaporationKgM2S': {
    parameters: (named) => ({
      bathC: fc.double({ min: 0, max: 100, noNaN: true }),
      bath: drawn(named, 'OvenBath'),
    }),
  },
  'heat.waterLevelMm': { parameters: (named) => ({ pan: drawn(named, 'OvenBath') }) },
  'heat.axisTemperatures': {
    runs: 20,
    given: (named) =>
      fc
        .tuple(drawn(named, 'Solid'), drawn(named, 'EnthalpyTable'), above0(3e5))
        .map(([solid, table, joules]) => [
          solid,
          table,
          new Float64Array((solid as ReturnType<typeof solidOfShape>).volumeM3.length).fill(joules),
        ]),
  },
  'heat.coreOfRun': {
    runs: 3,
    given: (named) =>
      fc
        .tuple(drawn(named, 'BatchThermal'), drawn(named, 'HeatStage'), from0(600))
        .map(([batch, stage, timeMin]) => [
          simulate(batch as BatchThermal, [stage as HeatStage], { tier: 'preview', everyMin: 2 }),
          timeMin,
        ]),
  },
  'heat.extremeOnAxis': {
    given: () =>
      fc
        .tuple(
          fc.array(fc.tuple(above0(0.02), fc.double({ min: -40, max: 120, noNaN: true })), {
            minLength: 3,
            maxLength: 9,
          }),
          fc.constantFrom('coldest', 'hottest'),
        )
        .map(([steps, which]) => {
          let height = 0;
          return [
            Float64Array.from(steps, ([step]) => (height += step)),
            Float64Array.from(steps, ([, tempC]) => tempC),
            which,
          ];
        }),
  },
  'heat.drawAdjustment': { parameters: withChance },
  'heat.fitToReadings': { runs: 1 },
  'heat.forecast': { runs: 1, parameters: withChance },
  'heat.levyConductivity': { parameters: () => shares },
  'heat.maxwellConductivity': { parameters: () => shares },
  'heat.pullAtC': { runs: 1 },
  'heat.simulate': {
    runs: 3,
    blank: /\.bathC\./,
    parameters: () => ({
      options: fc.record({ tier: fc.constant('preview'), everyMin: fc.constantFrom(1, 2, 5) }),
    }),
  },
  'heat.solidOfShape': {
    runs: 20,
    parameters: () => ({
      fineness: fc.integer({ min: 1, max: 4 }),
      smooth: fc.constantFrom(null, 6, 12),
    }),
  },
  'kitchen.takeThermometers': {
    parameters: () => ({ newId: fc.constant('t').map((id) => () => id) }),
  },
  'lethality.interpolatedDwellS': { parameters: inOrder('readings', 'readings') },
  'lethality.judgeHold': { parameters: inOrder('readings', 'readings') },
  'lethality.comeUp': { parameters: inOrder('readings', 'readings') },
  'lethality.logReduction': { parameters: () => ({ dRefMin: above0(1e4) }) },
  'lethality.logReductionOver': {
    parameters: (named) => ({ curves: fc.array(drawn(named, 'curve'), { maxLength: 3 }) }),
  },
  'lethality.pasteurisationValue': { parameters: inOrder('points', 'curve') },
  'cooling.judgeCooling': { parameters: inOrder('readings', 'readings') },
  'plan.inMinorUnits': { parameters: () => ({ decimals: fc.constantFrom(0, 2, 3) }) },
  'probe-log.projectCrossingMs': { parameters: inOrder('readings', 'readings') },
};

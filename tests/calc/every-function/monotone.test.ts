import { assess } from '@larderwright/calc/batch';
import {
  estimateWaterActivity,
  pumpedPpm,
  waterActivityPitzer,
  waterActivityQuadratic,
  worstCasePpm,
} from '@larderwright/calc/brine';
import { constantHeat, fatMeltingJkg, iceNeededG, minutesToWarm } from '@larderwright/calc/chill-budget';
import { COOL_RULE_SETS, judgeCooling } from '@larderwright/calc/cooling';
import { curingSaltForTarget, nitritePpm } from '@larderwright/calc/cure';
import {
  CURING_TIME_RULES,
  curingDays,
  diffusionDays,
  nitriteHalfLifeHours,
} from '@larderwright/calc/dry-cure';
import { LISTERIA_GROUPS, listeriaGrowth } from '@larderwright/calc/growth';
import { airStage, constantMaterial, simulate } from '@larderwright/calc/heat';
import { loadIngredients } from '@larderwright/calc/ingredients';
import {
  LINE_70_Z7_5,
  LINE_70_Z10,
  LINE_90_UK,
  LINE_90_US,
  logReduction,
  pasteurisationValue,
  trichinellaFreezingMeanH,
} from '@larderwright/calc/lethality';
import { comeUpForThickness } from '@larderwright/calc/plan';
import { pressPressureKPa } from '@larderwright/calc/press';
import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { demos } from '../../../content/demo/index.ts';

// Directions that physics and arithmetic give. All derived; nothing here is a figure.
const composition = await loadIngredients();

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const pairs = (min: number, max: number) =>
  fc
    .tuple(between(min, max), between(min, max))
    .map(([a, b]) => ({ less: Math.min(a, b), more: Math.max(a, b) }));
/** Room for the last digits of a sum. */
const nearly = (value: number) => value * (1 - 1e-9) - 1e-9;

interface Direction {
  readonly what: string;
  readonly of: (value: number) => number | null;
  readonly range: readonly [number, number];
  readonly goes: 'up' | 'down';
}

const directions: readonly Direction[] = [
  {
    what: 'nitrite in ppm with the nitrite weighed in',
    of: (g) => nitritePpm(g, 1000),
    range: [0, 5],
    goes: 'up',
  },
  {
    what: 'nitrite in ppm with the mass it is in',
    of: (g) => nitritePpm(0.2, g),
    range: [1, 1e6],
    goes: 'down',
  },
  {
    what: 'nitrite of a brine with what is pumped in',
    of: (share) => pumpedPpm(2, 1000, share),
    range: [0, 0.5],
    goes: 'up',
  },
  {
    what: 'nitrite of a brine, all of it counted, with the meat in it',
    of: (g) => worstCasePpm(2, g),
    range: [100, 1e6],
    goes: 'down',
  },
  {
    what: 'curing salt with its aim',
    of: (targetPpm) => {
      const dose = curingSaltForTarget({
        targetPpm,
        basisMassG: 5000,
        countsInBasis: true,
        nitriteFraction: 0.0625,
        readabilityG: 0.1,
        ceilingPpm: null,
      });
      return dose.ok ? dose.doseG : null;
    },
    range: [20, 200],
    goes: 'up',
  },
  { what: 'water activity with salt, Pitzer', of: waterActivityPitzer, range: [0, 0.26], goes: 'down' },
  {
    what: 'water activity with salt, the quadratic',
    of: waterActivityQuadratic,
    range: [0, 0.26],
    goes: 'down',
  },
  {
    what: 'water activity to plan by with salt',
    of: (salt) => estimateWaterActivity(salt)?.high ?? null,
    range: [0, 0.26],
    goes: 'down',
  },
  {
    what: 'life of nitrite with warmth',
    of: (tempC) => nitriteHalfLifeHours(tempC, 5.8),
    range: [0, 80],
    goes: 'down',
  },
  {
    what: 'days for salt to reach the middle with thickness',
    of: (mm) => diffusionDays(mm, 2e-10),
    range: [5, 300],
    goes: 'up',
  },
  ...CURING_TIME_RULES.map(({ id }) => ({
    what: `days of cure by the rule ${id} with size`,
    of: (size: number) => curingDays(id, size),
    range: [0.5, 30] as const,
    goes: 'up' as const,
  })),
  {
    what: 'come-up with thickness, at the least',
    of: (mm) => comeUpForThickness(60, 50, mm)?.leastMin ?? null,
    range: [10, 200],
    goes: 'up',
  },
  {
    what: 'come-up with thickness, at the most',
    of: (mm) => comeUpForThickness(60, 50, mm)?.mostMin ?? null,
    range: [10, 200],
    goes: 'up',
  },
  {
    what: 'ice with the heat to take away',
    of: (joules) => iceNeededG(joules, 2, -10),
    range: [0, 1e7],
    goes: 'up',
  },
  { what: 'ice with its own cold', of: (tempC) => iceNeededG(1e6, 2, tempC), range: [-40, 0], goes: 'up' },
  { what: 'heat that melts fat with its end', of: fatMeltingJkg, range: [-10, 60], goes: 'up' },
  {
    what: 'minutes until meat is warm with the warmth of the room',
    of: (roomC) =>
      minutesToWarm(
        { lots: [{ massG: 1000, heat: constantHeat(3500) }], massG: 1000, layerMm: 40, roomC, filmWm2K: 8 },
        2,
        8,
      ),
    range: [9, 40],
    goes: 'down',
  },
  {
    what: 'pressure of a board with its load',
    of: (kg) => pressPressureKPa(kg, 20_000),
    range: [0, 20],
    goes: 'up',
  },
  {
    what: 'hours of frost against Trichinella with its cold',
    of: trichinellaFreezingMeanH,
    range: [-35, -12],
    goes: 'up',
  },
  ...LISTERIA_GROUPS.map(({ id }) => ({
    what: `growth of Listeria in the group ${id} with the warmth of the store`,
    of: (tempC: number) => listeriaGrowth(id, [{ tempC, timeMin: 14_400 }]).log10,
    range: [0, 12] as const,
    goes: 'up' as const,
  })),
];

it.each(directions)('$what: never the other way', ({ of, range: [min, max], goes }) => {
  let told = 0;
  fc.assert(
    fc.property(pairs(min, max), ({ less, more }) => {
      const [low, high] = goes === 'up' ? [of(less), of(more)] : [of(more), of(less)];
      if (low === null || high === null) return;
      told++;
      expect(high).toBeGreaterThanOrEqual(nearly(low));
    }),
  );
  expect(told).toBeGreaterThan(0);
});

const curves = fc
  .array(fc.tuple(between(0.1, 30), between(20, 95)), { minLength: 2, maxLength: 12 })
  .map((steps) => {
    let timeMin = 0;
    return steps.map(([stepMin, tempC]) => {
      timeMin += stepMin;
      return { timeMin, tempC };
    });
  });

it('a hotter core, a longer hold: the pasteurisation value and its log reductions are never less', () => {
  fc.assert(
    fc.property(
      curves,
      between(0, 10),
      between(0, 60),
      fc.constantFrom(LINE_70_Z7_5, LINE_70_Z10, LINE_90_UK, LINE_90_US),
      fc.constantFrom('exact' as const, 'trapezoid' as const, 'fail-safe' as const),
      (curve, hotterC, longerMin, line, method) => {
        const last = curve.at(-1);
        if (!last) return;
        const value = pasteurisationValue(curve, line, { method });
        const hotter = curve.map(({ timeMin, tempC }) => ({ timeMin, tempC: tempC + hotterC }));
        const longer = [...curve, { timeMin: last.timeMin + longerMin, tempC: last.tempC }];
        for (const other of [hotter, longer]) {
          const more = pasteurisationValue(other, line, { method });
          expect(more).toBeGreaterThanOrEqual(nearly(value));
          expect(logReduction(more, 0.3)).toBeGreaterThanOrEqual(nearly(logReduction(value, 0.3)));
        }
      },
    ),
  );
});

it('a slower cooling never passes a leg that the quicker one does not', () => {
  const request = { errorC: 0.5, offsetKnown: true, unitSuspect: false, heatEndMs: 0 };
  fc.assert(
    fc.property(
      fc.constantFrom(...COOL_RULE_SETS),
      between(1, 4),
      between(0.003, 0.05),
      fc.integer({ min: 5, max: 40 }),
      ({ legs }, slower, ratePerMin, everyMin) => {
        const readings = (stretch: number) =>
          Array.from({ length: 60 }, (_, index) => ({
            atMs: Math.round(index * everyMin * stretch * 60_000),
            tempC: 2 + 70 * Math.exp(-ratePerMin * index * everyMin),
            counts: true,
          }));
        const states = (stretch: number) =>
          judgeCooling(readings(stretch), legs, request).map(({ state }) => state);
        const quick = states(1);
        for (const [index, state] of states(slower).entries()) {
          if (quick[index] !== 'pass') expect(state).not.toBe('pass');
        }
      },
    ),
  );
});

it('a thicker body, a cooler oven: the core is never there sooner', () => {
  const minutes = (sideMm: number, ovenC: number) =>
    simulate(
      { shape: { kind: 'cube', sideMm }, material: constantMaterial(0.45, 1050, 3500), startC: 5 },
      [airStage('oven', ovenC, { when: 'core-reaches', tempC: 68, mostMin: 900 })],
      { tier: 'preview' },
    )?.stages[0]?.timeMin ?? Number.NaN;
  fc.assert(
    fc.property(
      between(40, 90),
      between(0, 20),
      between(100, 160),
      between(0, 40),
      (side, thicker, oven, hotter) => {
        const base = minutes(side, oven);
        // A preview is good to about a minute in a hundred.
        expect(minutes(side + thicker, oven)).toBeGreaterThanOrEqual(base * 0.99 - 0.5);
        expect(minutes(side, oven + hotter)).toBeLessThanOrEqual(base * 1.01 + 0.5);
      },
    ),
    { numRuns: 8 },
  );
});

it('more of the curing salt in a batch never reads as less nitrite, and ten times the batch as the same', () => {
  let told = 0;
  for (const demo of Object.values(demos)) {
    const ppm = (change: (lineMassG: number, isCure: boolean) => number) => {
      const batch = structuredClone(demo);
      for (const line of batch.formula.lines) {
        const massG = Number(line.amount.text);
        if (line.amount.unit !== 'g' || !Number.isFinite(massG)) return null;
        line.actual = blankEntry('g');
        line.amount = enteredEntry(String(change(massG, line.cure !== null)), 'g');
      }
      return assess(batch, { composition, today: '2026-11-25' }).cure.values.nitritePpmMeat;
    };
    const now = ppm((massG) => massG);
    if (now === null || now === 0) continue;
    told++;
    expect(ppm((massG, isCure) => (isCure ? massG * 1.5 : massG))).toBeGreaterThan(now);
    expect(ppm((massG) => massG * 10)).toBeCloseTo(now, 9);
  }
  expect(told).toBeGreaterThan(0);
});

import { type BlendProblem, type ProblemMaterial, solveProblem } from '@larderwright/calc/blend';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { independentCost } from './independent.ts';

const hundredths = (min: number, max: number) => fc.integer({ min, max }).map((n) => n / 100);
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null, freq: 2 });
const rarely = <T>(value: fc.Arbitrary<T>) =>
  fc.oneof({ weight: 7, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: value });

/** Raw materials whose parts never pass the whole. */
const material = fc
  .record({
    perKg: hundredths(50, 2500),
    stockG: maybe(fc.integer({ min: 0, max: 9000 })),
    minShare: rarely(hundredths(1, 20)),
    maxShare: maybe(hundredths(10, 100)),
    lockedG: rarely(fc.integer({ min: 0, max: 600 })),
    fat: hundredths(1, 88),
    lean: hundredths(18, 26),
    salt: fc.integer({ min: 5, max: 300 }).map((n) => n / 10_000),
    liver: fc.integer({ min: 0, max: 4 }).map((n) => (n === 0 ? 1 : 0)),
  })
  .map(({ fat, lean, salt, liver, ...rest }): Omit<ProblemMaterial, 'id'> => {
    const rest_ = 1 - fat - salt;
    const protein = rest_ * lean;
    return { ...rest, fractions: { fat, protein, salt, liver, water: Math.max(0, rest_ - protein) } };
  });

const QUALITIES = ['fat', 'protein', 'salt', 'liver', 'water-to-protein'] as const;

/** Bands set about the mean of the materials, so that about half the blends can be made. */
const bandWidths = fc.record({
  quality: fc.constantFrom(...QUALITIES),
  low: maybe(hundredths(60, 135)),
  high: maybe(hundredths(65, 140)),
});

const problems: fc.Arbitrary<BlendProblem> = fc
  .record({
    totalG: fc.integer({ min: 1000, max: 12_000 }),
    materials: fc.array(material, { minLength: 3, maxLength: 8 }),
    widths: fc.uniqueArray(bandWidths, { minLength: 1, maxLength: 3, selector: ({ quality }) => quality }),
  })
  .map(({ materials, widths, totalG }) => {
    const mean = (name: 'fat' | 'protein' | 'salt' | 'liver' | 'water') =>
      materials.reduce((sum, { fractions }) => sum + (fractions[name] ?? 0), 0) / materials.length;
    const bands = widths.map(({ quality, low, high }) => {
      const middle = quality === 'water-to-protein' ? mean('water') / mean('protein') : mean(quality);
      return { quality, min: low === null ? null : low * middle, max: high === null ? null : high * middle };
    });
    return { totalG, bands, materials: materials.map((one, index) => ({ ...one, id: `m${index}` })) };
  });

const RUNS = 600;
const sample = fc.sample(problems, { numRuns: RUNS, seed: 20_261_125 });
const answers = await Promise.all(sample.map(solveProblem));
const pairs = sample.map((problem, index) => ({ problem, answer: answers[index] }));
const close = (one: number, other: number) =>
  expect(Math.abs(one - other)).toBeLessThan(1e-6 * Math.max(1, other));

describe(`${RUNS} random blends, checked against HiGHS`, () => {
  it('of which enough can be made and enough cannot', () => {
    const count = (state: string) => answers.filter((answer) => answer.state === state).length;
    expect(count('optimal')).toBeGreaterThan(100);
    expect(count('infeasible')).toBeGreaterThan(100);
    expect(count('no-answer')).toBe(0);
  });

  it('cost the same, or neither can be made', () => {
    for (const { problem, answer } of pairs) {
      if (answer?.state === 'nothing-to-choose') continue;
      const cost = independentCost(problem);
      if (cost === null) expect(answer?.state).toBe('infeasible');
      else {
        expect(answer?.state).toBe('optimal');
        if (answer?.state === 'optimal') close(answer.blend.cost, cost);
      }
    }
  });

  it('conserve mass to 1 mg and overstep no bound', () => {
    for (const { problem, answer } of pairs) {
      if (answer?.state !== 'optimal') continue;
      const { shares, makeup } = answer.blend;
      const sumG = shares.reduce((sum, { massG }) => sum + massG, 0);
      expect(Math.abs(sumG - problem.totalG)).toBeLessThan(1e-3);
      for (const [index, { stockG, minShare, maxShare, lockedG }] of problem.materials.entries()) {
        const { massG = Number.NaN, share = Number.NaN } = shares[index] ?? {};
        if (lockedG !== null) expect(massG).toBeCloseTo(lockedG, 6);
        else {
          expect(massG).toBeLessThanOrEqual((stockG ?? Number.POSITIVE_INFINITY) + 1e-3);
          expect(share).toBeGreaterThanOrEqual((minShare ?? 0) - 1e-7);
          expect(share).toBeLessThanOrEqual((maxShare ?? 1) + 1e-7);
        }
      }
      for (const { quality, min, max } of problem.bands) {
        const value = quality === 'water-to-protein' ? makeup.waterToProtein : makeup[quality];
        expect(value).toBeGreaterThanOrEqual((min ?? 0) - 1e-6);
        expect(value).toBeLessThanOrEqual((max ?? Number.POSITIVE_INFINITY) + 1e-6);
      }
    }
  });

  it('tell what one more or less of a stock or bound changes, as HiGHS finds it solved again', () => {
    let checked = 0;
    for (const { problem, answer } of pairs) {
      if (answer?.state !== 'optimal') continue;
      for (const { bound, movedBy, costChange } of answer.worths) {
        if (bound.kind !== 'stock') continue;
        checked += 1;
        const materials = problem.materials.map((one) =>
          one.id === bound.materialId ? { ...one, stockG: (one.stockG ?? 0) + movedBy } : one,
        );
        const moved = independentCost({ ...problem, materials });
        if (moved === null) expect(costChange).toBe(null);
        else close((costChange ?? Number.NaN) + answer.blend.cost, moved);
      }
    }
    expect(checked).toBeGreaterThan(50);
  });

  it('more of anything never makes a blend dearer, less never cheaper', () => {
    for (const { answer } of pairs) {
      if (answer?.state !== 'optimal') continue;
      for (const { movedBy, costChange } of answer.worths) {
        if (costChange !== null) expect(costChange * Math.sign(movedBy)).toBeLessThan(1e-6);
      }
    }
  });
});

/** A problem with one bound put elsewhere. */
function moved(
  problem: BlendProblem,
  bound: Extract<(typeof answers)[number], { state: 'infeasible' }>['alone'][number]['bound'],
  limit: number,
): BlendProblem {
  if ('quality' in bound) {
    const side = bound.kind === 'quality-min' ? 'min' : 'max';
    return {
      ...problem,
      bands: problem.bands.map((one) => (one.quality === bound.quality ? { ...one, [side]: limit } : one)),
    };
  }
  const field = bound.kind === 'stock' ? 'stockG' : bound.kind === 'least-share' ? 'minShare' : 'maxShare';
  return {
    ...problem,
    materials: problem.materials.map((one) =>
      one.id === bound.materialId ? { ...one, [field]: limit } : one,
    ),
  };
}

describe('a blend that cannot be', () => {
  const impossible = pairs.flatMap(({ problem, answer }) =>
    answer?.state === 'infeasible' ? [{ problem, answer }] : [],
  );
  /** Room beyond and short of a limit, in its own unit. */
  const beyond = (kind: string, limit: number, room: number, stockScaleG: number) => {
    const outward = kind === 'least-share' || kind === 'quality-min' ? -1 : 1;
    return limit + outward * room * (kind === 'stock' ? stockScaleG : 1);
  };

  it('can be once the bounds named together have given way so far', () => {
    for (const { problem, answer } of impossible) {
      expect(answer.together.length).toBeGreaterThan(0);
      const given = answer.together.reduce(
        (one, { bound, reachable }) => moved(one, bound, beyond(bound.kind, reachable, 1e-5, problem.totalG)),
        problem,
      );
      expect(independentCost(given)).not.toBe(null);
    }
  });

  it('can be once a bound that would do alone has given way, and not a little before', () => {
    let checked = 0;
    for (const { problem, answer } of impossible) {
      for (const { bound, reachable, by } of answer.alone) {
        checked += 1;
        expect(by).toBeGreaterThan(0);
        const room = (amount: number) =>
          moved(problem, bound, beyond(bound.kind, reachable, amount, problem.totalG));
        expect(independentCost(room(1e-5))).not.toBe(null);
        expect(independentCost(room(-1e-5))).toBe(null);
      }
    }
    expect(checked).toBeGreaterThan(50);
  });

  it('can be by no other bound alone: any that is not named may go as far as it likes', () => {
    for (const { problem, answer } of impossible.slice(0, 60)) {
      const named = (materialId: string) =>
        answer.alone.some(({ bound }) => bound.kind === 'stock' && bound.materialId === materialId);
      for (const { id, stockG, lockedG } of problem.materials) {
        if (stockG === null || lockedG !== null || named(id)) continue;
        expect(independentCost(moved(problem, { kind: 'stock', materialId: id, limit: 0 }, 1e9))).toBe(null);
      }
    }
  });
});

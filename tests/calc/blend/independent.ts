import type { BlendProblem } from '@larderwright/calc/blend';
import highsLoader from 'highs';

const highs = await highsLoader();

/** Numbers of a programme as text: digits, no exponent. */
function term(coefficient: number, name: string): string {
  return `${coefficient < 0 ? '-' : '+'} ${Math.abs(coefficient).toFixed(12)} ${name}`;
}

/**
 * The cheapest cost of a blend by another library (HiGHS), the problem written down anew: in kilograms, with fixed
 * materials as variables and ratios as water − r × protein. Null: no blend.
 */
export function independentCost(problem: BlendProblem): number | null {
  const totalKg = problem.totalG / 1000;
  const row = (of: (index: number) => number) =>
    problem.materials.map((_, index) => term(of(index), `m${index}`)).join(' ');
  const fraction = (index: number, name: keyof BlendProblem['materials'][number]['fractions']) =>
    problem.materials[index]?.fractions[name] ?? 0;
  const rows = [`${row(() => 1)} = ${totalKg.toFixed(12)}`];
  for (const { quality, min, max } of problem.bands) {
    for (const [limit, sign] of [
      [min, '>='],
      [max, '<='],
    ] as const) {
      if (limit === null) continue;
      if (quality === 'water-to-protein') {
        rows.push(
          `${row((index) => fraction(index, 'water') - limit * fraction(index, 'protein'))} ${sign} 0`,
        );
      } else
        rows.push(`${row((index) => fraction(index, quality))} ${sign} ${(limit * totalKg).toFixed(12)}`);
    }
  }
  const bounds = problem.materials.map(({ lockedG, stockG, minShare, maxShare }, index) => {
    if (lockedG !== null) return `m${index} = ${(lockedG / 1000).toFixed(12)}`;
    const most = Math.min((stockG ?? 1e9) / 1000, (maxShare ?? 1) * totalKg);
    const least = (minShare ?? 0) * totalKg;
    if (least > most) return null;
    return `${least.toFixed(12)} <= m${index} <= ${most.toFixed(12)}`;
  });
  if (bounds.some((bound) => bound === null)) return null;
  const text = [
    'Minimize',
    ` cost: ${row((index) => problem.materials[index]?.perKg ?? 0)}`,
    'Subject To',
    ...rows.map((line, index) => ` r${index}: ${line}`),
    'Bounds',
    ...bounds.map((line) => ` ${line}`),
    'End',
  ].join('\n');
  const { Status, ObjectiveValue } = highs.solve(text);
  if (Status === 'Optimal') return ObjectiveValue;
  if (Status === 'Infeasible') return null;
  throw new Error(`HiGHS says ${Status}`);
}

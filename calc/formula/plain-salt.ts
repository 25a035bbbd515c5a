import { compensatedSum } from '../quantities/index.ts';
import { type MixMasses, SMALL_SHARE } from './mix.ts';
import { isInBowl } from './parts.ts';
import type { ReadLine } from './read-line.ts';
import { solveMasses } from './solve-masses.ts';

/** How much plain salt a mix needs in all to reach its target. */
export type PlainSaltNeed =
  | {
      readonly state: 'ok';
      /** Plain salt in all, not on top of what the formula lists, g. */
      readonly plainSaltG: number;
      /** Everything in the bowl with that salt, g. */
      readonly totalG: number;
      /** Salt from every other line, g. */
      readonly carriedSaltG: number;
    }
  | {
      readonly state: 'over-supplied';
      /** Salt above the target before any plain salt, g. */
      readonly excessG: number;
      readonly carriedSaltG: number;
      /** Salt the other lines make of the mix, fraction. */
      readonly carriedFraction: number;
      /** The line that brings most of it. */
      readonly overSupplier: { readonly lineId: string; readonly name: string; readonly saltG: number };
    }
  | { readonly state: 'cannot-tell'; readonly because: 'target' | 'mass' | 'salt' };

interface Balance {
  readonly totalG: number;
  readonly carriedG: number;
  readonly byLine: readonly number[];
}

/** Total and carried salt with a given mass of plain salt in the bowl. */
function balance(
  others: readonly ReadLine[],
  massesG: readonly (number | null)[],
  totalG: number,
): Balance | 'salt' {
  const byLine = others.map((line, index) =>
    isInBowl(line.line.part) ? (massesG[index] ?? 0) * (line.composition.salt.fraction ?? 0) : 0,
  );
  const unknownG = compensatedSum(
    others.map((line, index) =>
      isInBowl(line.line.part) && line.composition.salt.fraction === null ? (massesG[index] ?? 0) : 0,
    ),
  );
  return unknownG > SMALL_SHARE * totalG ? 'salt' : { totalG, carriedG: compensatedSum(byLine), byLine };
}

/**
 * Plain salt so that salt from all sources is the wanted fraction of the *final* total, the salt itself and shares of
 * the total included. Without shares this is (s·T − carried) ÷ (1 − s), T being everything but the plain salt; with
 * them total and carried salt still rise in a straight line with the salt added, which two points fix.
 * Derived: mass balance. Lines of part `salt` are the plain salt and are left out, whatever stands in them.
 *
 * @param targetFraction wanted salt, 0–1; null unknown
 * @param weighed masses of `lines` as weighed, when those are in use
 */
export function plainSaltNeed(
  lines: readonly ReadLine[],
  targetFraction: number | null,
  weighed: MixMasses | null,
): PlainSaltNeed {
  if (targetFraction === null || targetFraction >= 1) return { state: 'cannot-tell', because: 'target' };
  const others = lines.filter((line) => line.line.part !== 'salt');
  const at = (saltG: number): Balance | 'mass' | 'salt' => {
    if (weighed) {
      const massesG = weighed.massesG.filter((_, index) => lines[index]?.line.part !== 'salt');
      const inBowl = massesG.filter((_, index) => isInBowl(others[index]?.line.part ?? 'lining'));
      const known = inBowl.filter((massG) => massG !== null);
      if (known.length < inBowl.length) return 'mass';
      return balance(others, massesG, compensatedSum(known) + saltG);
    }
    const solved = solveMasses([
      ...others.map(({ planned }) => planned),
      { part: 'salt', basis: 'mass', amount: saltG },
    ]);
    return solved.totalG === null ? 'mass' : balance(others, solved.massesG, solved.totalG);
  };
  const none = at(0);
  if (typeof none === 'string') return { state: 'cannot-tell', because: none };
  if (none.totalG === 0) return { state: 'cannot-tell', because: 'mass' };
  const more = at(none.totalG);
  if (typeof more === 'string') return { state: 'cannot-tell', because: more };
  const shortG = targetFraction * none.totalG - none.carriedG;
  const totalPerG = (more.totalG - none.totalG) / none.totalG;
  const carriedPerG = (more.carriedG - none.carriedG) / none.totalG;
  const saltPerG = 1 + carriedPerG - targetFraction * totalPerG;
  if (shortG < -1e-9 * none.totalG) {
    const most = Math.max(...none.byLine);
    const line = others[none.byLine.indexOf(most)];
    return {
      state: 'over-supplied',
      excessG: -shortG,
      carriedSaltG: none.carriedG,
      carriedFraction: none.carriedG / none.totalG,
      overSupplier: { lineId: line?.line.id ?? '', name: line?.line.name ?? '', saltG: most },
    };
  }
  if (saltPerG <= 0) return { state: 'cannot-tell', because: 'mass' };
  const plainSaltG = Math.max(0, shortG) / saltPerG;
  return {
    state: 'ok',
    plainSaltG,
    totalG: none.totalG + totalPerG * plainSaltG,
    carriedSaltG: none.carriedG + carriedPerG * plainSaltG,
  };
}

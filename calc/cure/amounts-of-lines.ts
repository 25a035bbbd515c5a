import { compensatedSum } from '../quantities/index.ts';
import type { CureAmounts, Span, UnboundedBecause } from './amounts.ts';
import { type CarriedNitrite, carriedNitrite, isCuringVegetable } from './carried-nitrite.ts';
import { type CureLine, curingSalts } from './cure-line.ts';

/** Rows of the composition table that speed curing up; all are sodium salts. */
const ACCELERATORS: readonly string[] = ['sodium-erythorbate', 'sodium-ascorbate'];
const MEAT_BLOCK: readonly string[] = ['lean', 'fat', 'liver', 'offal'];

/**
 * The facts the limits are judged on, from the lines of a formula. Every curing salt counts, and
 * every line that brings nitrite of its own; lining is kept apart, for it is not in the bowl.
 *
 * @param finishedG the whole finished product, g, or null
 */
export function amountsOfLines(lines: readonly CureLine[], finishedG: number | null): CureAmounts {
  const bowl = lines.filter((line) => line.part !== 'lining');
  const lining = lines.filter((line) => line.part === 'lining');
  const cures = curingSalts(bowl);
  const carried = carriedNitrite(lines);
  const cureNitrite = span(cures.map((line) => part(line.massG, line.curingSalt.nitriteFraction)));
  const bowlCarried = spanOfCarried(carried.filter((item) => item.part !== 'lining'));
  return {
    isEmpty: !lines.some((line) => line.massG !== null && line.massG > 0),
    meatBlockG: massOf(bowl.filter((line) => MEAT_BLOCK.includes(line.part))),
    totalG: massOf(bowl),
    liningG: massOf(lining),
    finishedG,
    nitriteG: addSpans(cureNitrite, bowlCarried),
    liningNitriteG: spanOfCarried(carried.filter((item) => item.part === 'lining')),
    nitrateG: span([
      ...cures.map((line) => part(line.massG, line.curingSalt.nitrateFraction)),
      ...bowl.filter(isCuringVegetable).map(() => null),
    ]),
    declaresNitrate: cures.some((line) => line.massG !== 0 && (line.curingSalt.nitrateFraction ?? 0) > 0),
    acceleratorG: span(
      bowl
        .filter((line) => ACCELERATORS.includes(line.ingredient?.id ?? ''))
        .map((line) => part(line.massG, 1)),
    ),
    unboundedBecause: unboundedBecause(cures, bowlCarried),
  };
}

/** Sum of the masses, or null as soon as one is not known. */
export function massOf(lines: readonly CureLine[]): number | null {
  const masses = lines.map((line) => line.massG).filter((mass) => mass !== null);
  return masses.length === lines.length ? compensatedSum(masses) : null;
}

/** Nothing of an unknown strength is nothing; something of an unknown strength is unknown. */
function part(massG: number | null, fraction: number | null): number | null {
  if (massG === 0 || fraction === 0) return 0;
  return massG === null || fraction === null ? null : massG * fraction;
}

function span(parts: readonly (number | null)[]): Span {
  const known = parts.filter((value) => value !== null);
  const low = compensatedSum(known);
  return { low, high: known.length === parts.length ? low : null };
}

function spanOfCarried(carried: readonly CarriedNitrite[]): Span {
  const highs = carried.map((item) => item.highG).filter((high) => high !== null);
  return {
    low: compensatedSum(carried.map((item) => item.lowG)),
    high: highs.length === carried.length ? compensatedSum(highs) : null,
  };
}

function addSpans(a: Span, b: Span): Span {
  return { low: a.low + b.low, high: a.high === null || b.high === null ? null : a.high + b.high };
}

function unboundedBecause(cures: ReturnType<typeof curingSalts>, bowlCarried: Span): UnboundedBecause | null {
  const filled = cures.filter((line) => line.massG !== 0);
  if (filled.some((line) => line.curingSalt.nitriteFraction === null)) return 'strength';
  if (filled.some((line) => line.massG === null)) return 'curing-salt-amount';
  return bowlCarried.high === null ? 'carried-amount' : null;
}

import { compensatedSum } from '../quantities/index.ts';
import { COMPONENTS, type Component, type CompositionOrigin } from './line-composition.ts';
import { isInBowl } from './parts.ts';
import type { ReadLine } from './read-line.ts';
import { saltOnWaterFraction } from './salt-on-water.ts';
import type { LinePart } from './slice.ts';

/** One line's mass and shares. */
export interface MixLine {
  readonly lineId: string;
  readonly name: string;
  readonly part: LinePart;
  readonly massG: number | null;
  /** Of everything in the bowl; null for a lining. */
  readonly ofTotalFraction: number | null;
  /** Of the meat block; for any line, not meat alone. */
  readonly ofMeatFraction: number | null;
  /** The scale said so; otherwise the plan does. */
  readonly weighed: boolean;
}

/** What one line brings of one component: mass × fraction = grams. The worked formula shows these. */
export interface Contribution {
  readonly lineId: string;
  readonly name: string;
  readonly massG: number | null;
  readonly fraction: number | null;
  readonly grams: number | null;
  readonly from: CompositionOrigin;
}

/**
 * One component of the mix. `grams` and `fraction` are null while an unknown line could move them; the bounds then
 * say between what they lie, were the unknown lines to hold none or as much as they can.
 */
export interface MixComponent {
  readonly grams: number | null;
  readonly fraction: number | null;
  readonly minFraction: number | null;
  readonly maxFraction: number | null;
  /** In the order of the lines. */
  readonly contributions: readonly Contribution[];
  /** Lines of unknown composition too small to move the printed digit, counted as holding none. */
  readonly leftOut: readonly string[];
}

export interface Mix {
  readonly lines: readonly MixLine[];
  readonly totalG: number | null;
  readonly meatBlockG: number | null;
  readonly water: MixComponent;
  readonly protein: MixComponent;
  readonly fat: MixComponent;
  readonly salt: MixComponent;
  readonly saltOnWaterFraction: number | null;
  /** Least and most that unknown lines allow. A safety rule asks for the least. */
  readonly saltOnWaterMinFraction: number | null;
  readonly saltOnWaterMaxFraction: number | null;
  readonly waterToProtein: number | null;
  readonly fatToProtein: number | null;
}

/** Share of the total below which unknown lines cannot move a figure printed to 0.1 % by more than its last digit. */
export const SMALL_SHARE = 0.001;

/** Masses a mix is made with. */
export interface MixMasses {
  readonly massesG: readonly (number | null)[];
  readonly weighed: readonly boolean[];
  readonly totalG: number | null;
  readonly meatBlockG: number | null;
}

function share(part: number | null, whole: number | null): number | null {
  return part === null || whole === null || whole === 0 ? null : part / whole;
}

/** Most that a line can hold of a component: what its known components leave. */
function mostFraction(line: ReadLine): number {
  const known = COMPONENTS.map((component) => line.composition[component].fraction ?? 0);
  return Math.max(0, 1 - compensatedSum(known));
}

/** A line with the mass it counts with, g. */
export interface LineMass {
  readonly line: ReadLine;
  readonly massG: number | null;
}

/** One component of some lines and of their total. Derived: sums of mass × fraction. */
export function makeComponent(
  name: Component,
  counted: readonly LineMass[],
  totalG: number | null,
): MixComponent {
  const contributions = counted.map(({ line, massG }): Contribution => {
    const { fraction, from } = line.composition[name];
    const grams = fraction === null ? null : fraction === 0 ? 0 : massG === null ? null : massG * fraction;
    return { lineId: line.line.id, name: line.line.name, massG, fraction, grams, from };
  });
  const unknown = counted.filter(({ line }) => line.composition[name].fraction === null);
  if (totalG === null || totalG === 0 || counted.some(({ massG }) => massG === null))
    return { grams: null, fraction: null, minFraction: null, maxFraction: null, contributions, leftOut: [] };
  const knownG = compensatedSum(contributions.map(({ grams }) => grams ?? 0));
  const openG = compensatedSum(unknown.map(({ line, massG }) => (massG ?? 0) * mostFraction(line)));
  const unknownG = compensatedSum(unknown.map(({ massG }) => massG ?? 0));
  const settled = unknownG <= SMALL_SHARE * totalG;
  return {
    grams: settled ? knownG : null,
    fraction: settled ? knownG / totalG : null,
    minFraction: knownG / totalG,
    maxFraction: (knownG + openG) / totalG,
    contributions,
    leftOut: settled ? unknown.filter(({ massG }) => massG !== 0).map(({ line }) => line.line.id) : [],
  };
}

function ratio(top: number | null, bottom: number | null): number | null {
  return top === null || bottom === null || bottom === 0 ? null : top / bottom;
}

function phase(salt: number | null, water: number | null): number | null {
  return salt === null || water === null ? null : saltOnWaterFraction(salt, water);
}

/**
 * What a mix is made of: masses, shares, water, protein, fat and salt from every source.
 * Derived: sums of mass × fraction over the lines in the bowl.
 */
export function makeMix(lines: readonly ReadLine[], masses: MixMasses): Mix {
  const { totalG, meatBlockG } = masses;
  const bowl = lines
    .map((line, index) => ({ line, massG: masses.massesG[index] ?? null }))
    .filter(({ line }) => isInBowl(line.line.part));
  const of = (name: Component) => makeComponent(name, bowl, totalG);
  const [water, protein, fat, salt] = [of('water'), of('protein'), of('fat'), of('salt')];
  return {
    lines: lines.map(({ line }, index) => {
      const massG = masses.massesG[index] ?? null;
      return {
        lineId: line.id,
        name: line.name,
        part: line.part,
        massG,
        ofTotalFraction: isInBowl(line.part) ? share(massG, totalG) : null,
        ofMeatFraction: share(massG, meatBlockG),
        weighed: masses.weighed[index] ?? false,
      };
    }),
    totalG,
    meatBlockG,
    water,
    protein,
    fat,
    salt,
    saltOnWaterFraction: phase(salt.grams, water.grams),
    saltOnWaterMinFraction: phase(salt.minFraction, water.maxFraction),
    saltOnWaterMaxFraction: phase(salt.maxFraction, water.minFraction),
    waterToProtein: ratio(water.grams, protein.grams),
    fatToProtein: ratio(fat.grams, protein.grams),
  };
}

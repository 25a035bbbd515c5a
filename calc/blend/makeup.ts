import { COMPONENTS, type Component } from '../formula/index.ts';
import { compensatedSum } from '../quantities/index.ts';

/**
 * What standards of composition ask of a blend. Added water is water less four times meat protein (9 CFR 318.22(b),
 * without its allowance for other protein, which a blend cannot count on); it may be below none. Ice is water as it
 * goes in.
 */
export type StandardFigure = 'added-water' | 'fat-and-added-water' | 'ice';

/** What one material brings, as fractions of it; null is unknown. */
export type MaterialFractions = Readonly<Record<Component | 'liver', number | null>> &
  Readonly<Partial<Record<StandardFigure, number | null>>>;

/** What a blend is made of, fractions of its mass. A quality is null while a material used in it is unknown. */
export interface Makeup {
  readonly water: number | null;
  readonly protein: number | null;
  readonly fat: number | null;
  readonly salt: number | null;
  readonly liver: number | null;
  readonly waterToProtein: number | null;
  readonly fatToProtein: number | null;
  readonly 'added-water': number | null;
  readonly 'fat-and-added-water': number | null;
  readonly ice: number | null;
}

/** A material and its share of a blend, 0–1. */
export interface Portion {
  readonly fractions: MaterialFractions;
  readonly share: number;
}

function ratio(top: number | null, bottom: number | null): number | null {
  return top === null || bottom === null || bottom === 0 ? null : top / bottom;
}

/**
 * Composition of a blend: Σ share × fraction. Derived: mass balance.
 */
export function makeupOf(portions: readonly Portion[]): Makeup {
  const of = (name: Component | 'liver' | StandardFigure): number | null => {
    const parts = portions
      .filter(({ share }) => share > 0)
      .map(({ share, fractions }) => {
        const fraction = fractions[name] ?? null;
        return fraction === null ? null : share * fraction;
      });
    const known = parts.filter((part) => part !== null);
    return known.length === parts.length && parts.length > 0 ? compensatedSum(known) : null;
  };
  const [water, protein, fat, salt] = COMPONENTS.map(of);
  return {
    water: water ?? null,
    protein: protein ?? null,
    fat: fat ?? null,
    salt: salt ?? null,
    liver: of('liver'),
    waterToProtein: ratio(water ?? null, protein ?? null),
    fatToProtein: ratio(fat ?? null, protein ?? null),
    'added-water': of('added-water'),
    'fat-and-added-water': of('fat-and-added-water'),
    ice: of('ice'),
  };
}

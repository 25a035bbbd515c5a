import { besselJ } from './bessel.ts';

/** A body whose unsteady conduction has a series. `place` is the distance from the middle over the half-width. */
export type Body = 'slab' | 'cylinder' | 'sphere';

/** One root and its coefficient. */
interface Term {
  readonly zeta: number;
  readonly c: number;
}

/** The equation whose roots are wanted, free of poles: Carslaw & Jaeger (1959). */
const EQUATION: Record<Body, (zeta: number, biot: number) => number> = {
  slab: (z, bi) => z * Math.sin(z) - bi * Math.cos(z),
  cylinder: (z, bi) => z * besselJ(1, z) - bi * besselJ(0, z),
  sphere: (z, bi) => (1 - bi) * Math.sin(z) - z * Math.cos(z),
};

const COEFFICIENT: Record<Body, (zeta: number) => number> = {
  slab: (z) => (4 * Math.sin(z)) / (2 * z + Math.sin(2 * z)),
  cylinder: (z) => (2 * besselJ(1, z)) / (z * (besselJ(0, z) ** 2 + besselJ(1, z) ** 2)),
  sphere: (z) => (4 * (Math.sin(z) - z * Math.cos(z))) / (2 * z - Math.sin(2 * z)),
};

const PROFILE: Record<Body, (argument: number) => number> = {
  slab: Math.cos,
  cylinder: (x) => besselJ(0, x),
  sphere: (x) => (x === 0 ? 1 : Math.sin(x) / x),
};

const known = new Map<string, readonly Term[]>();

/** The first roots of a body at a Biot number and their coefficients. */
export function termsOf(body: Body, biot: number, count = 30): readonly Term[] {
  const key = `${body} ${biot} ${count}`;
  const terms = known.get(key) ?? findTerms(body, biot, count);
  known.set(key, terms);
  return terms;
}

/** By scanning for sign changes and bisecting. */
function findTerms(body: Body, biot: number, count: number): Term[] {
  const equation = (z: number) => EQUATION[body](z, biot);
  const terms: Term[] = [];
  const scan = 0.02;
  for (let z = 1e-6; terms.length < count; z += scan) {
    if (equation(z) * equation(z + scan) > 0) continue;
    let low = z;
    let high = z + scan;
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if (equation(low) * equation(middle) <= 0) high = middle;
      else low = middle;
    }
    terms.push({ zeta: low, c: COEFFICIENT[body](low) });
  }
  return terms;
}

/** (T − T∞)/(T0 − T∞) at a place and a Fourier number, for a step of the surroundings. */
export function theta(body: Body, biot: number, fourier: number, place = 0): number {
  return termsOf(body, biot).reduce(
    (sum, { zeta, c }) => sum + c * PROFILE[body](zeta * place) * Math.exp(-zeta * zeta * fourier),
    0,
  );
}

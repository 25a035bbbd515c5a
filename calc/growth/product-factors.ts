/**
 * Rate models with product factors, for cold-growing bacteria in meat and fish. All constants are from memory, and what
 * is shown of them says so.
 */
export interface ProductFactors {
  /** 1/h at 25 °C, natural logarithms. */
  readonly at25PerH: number;
  readonly minC: number;
  readonly minWaterActivity: number;
  readonly minPh: number;
  /** Undissociated lactic acid that stops growth, mM. */
  readonly lacticStopMM: number;
  readonly nitriteStopPpm: number;
  /** Outside these nothing can be told. Null: no range is known. */
  readonly rangeC: readonly [number, number];
  readonly rangePh: readonly [number, number] | null;
  readonly rangeWaterActivity: readonly [number, number] | null;
}

/** What the food is. */
export interface ProductState {
  readonly tempC: number;
  readonly waterActivity: number;
  readonly ph: number;
  readonly nitritePpm: number;
  /** Undissociated, mM in the water phase. */
  readonly lacticMM: number;
}

/** L. monocytogenes in seafood and meat. Mejlholm & Dalgaard 2009, J. Food Prot. 72:2132; from memory. */
export const LISTERIA_2009: ProductFactors = {
  at25PerH: 0.419,
  minC: -2.83,
  minWaterActivity: 0.923,
  minPh: 4.97,
  lacticStopMM: 3.79,
  nitriteStopPpm: 350,
  rangeC: [2, 25],
  rangePh: [5.6, 7.7],
  rangeWaterActivity: [0.95, 1],
};

/** Cold-growing Lactobacillus in seafood and meat. Mejlholm & Dalgaard 2013, Int. J. Food Microbiol. 167:244; from memory. */
export const LACTIC_2013: ProductFactors = {
  at25PerH: 0.583,
  minC: -5.25,
  minWaterActivity: 0.928,
  minPh: 4.24,
  lacticStopMM: 12,
  nitriteStopPpm: 2780,
  rangeC: [0, 25],
  rangePh: null,
  rangeWaterActivity: null,
};

export interface ProductRate {
  readonly perH: number;
  /** Without the slowing that several hurdles work together. */
  readonly withoutInteractionPerH: number;
  /** 0.5 and under: hurdles act each for itself; 1 and over: no growth. */
  readonly psi: number;
}

const isWithin = (value: number, range: readonly [number, number] | null) =>
  range === null || (value >= range[0] && value <= range[1]);

const share = (value: number) => Math.min(1, Math.max(0, value));

/**
 * Growth rate of a food, 1/h in natural logarithms.
 *
 * @returns null outside what the model was made for, or where an input is no number
 */
export function productRate(
  factors: ProductFactors,
  { tempC, waterActivity, ph, nitritePpm, lacticMM }: ProductState,
): ProductRate | null {
  const inputs = [tempC, waterActivity, ph, nitritePpm, lacticMM];
  const { rangeC, rangePh, rangeWaterActivity } = factors;
  if (!inputs.every(Number.isFinite) || !isWithin(tempC, rangeC)) return null;
  if (!isWithin(ph, rangePh) || !isWithin(waterActivity, rangeWaterActivity)) return null;
  const gammas = [
    share((tempC - factors.minC) / (25 - factors.minC)) ** 2,
    share((waterActivity - factors.minWaterActivity) / (1 - factors.minWaterActivity)),
    share(1 - 10 ** (factors.minPh - ph)),
    share(1 - nitritePpm / factors.nitriteStopPpm),
    share(1 - lacticMM / factors.lacticStopMM),
  ];
  const withoutInteractionPerH = gammas.reduce((rate, gamma) => rate * gamma, factors.at25PerH);
  const psi = psiOf(gammas.map((gamma) => (1 - Math.sqrt(gamma)) ** 2));
  const xi = psi <= 0.5 ? 1 : Math.max(0, 2 * (1 - psi));
  return { perH: withoutInteractionPerH * xi, withoutInteractionPerH, psi };
}

/** ψ = Σ φᵢ ÷ (2 Π over the others of (1 − φⱼ)). A factor that stops growth alone gives infinity. */
function psiOf(phis: readonly number[]): number {
  return phis.reduce((sum, phi, i) => {
    const others = phis.reduce((product, other, j) => (i === j ? product : product * (1 - other)), 1);
    return phi === 0 ? sum : sum + phi / (2 * others);
  }, 0);
}

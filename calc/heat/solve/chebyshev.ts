/**
 * Coefficients of one step of the stabilised Runge–Kutta–Chebyshev rule of second order with `stages`
 * stages. Arrays are indexed by stage, 0 and 1 unused where the rule has none.
 * Source: `sommeijer-shampine-verwer-1997`.
 */
export interface ChebyshevRule {
  readonly stages: number;
  /** Weight of the first derivative in the first stage. */
  readonly firstWeight: number;
  readonly mu: Float64Array;
  readonly nu: Float64Array;
  readonly muTilde: Float64Array;
  readonly gammaTilde: Float64Array;
  /** Share of the step at which each stage stands. */
  readonly places: Float64Array;
}

/** Damping of the rule, as its authors choose it. */
const DAMPING = 2 / 13;

const rules = new Map<number, ChebyshevRule>();

/** The rule with this many stages, at least two. */
export function chebyshevRule(stages: number): ChebyshevRule {
  const known = rules.get(stages);
  if (known !== undefined) return known;
  const rule = derive(stages);
  rules.set(stages, rule);
  return rule;
}

/** Stages needed so that a step of `stepS` seconds is stable when the fastest rate is `rate` per second. */
export function stagesFor(stepS: number, rate: number): number {
  return Math.max(2, 1 + Math.floor(Math.sqrt(1 + 1.54 * stepS * rate)));
}

/** The longest stable step with this many stages, s: the reverse of `stagesFor`. */
export function longestStep(stages: number, rate: number): number {
  return (stages * stages - 1) / (1.54 * rate);
}

function derive(s: number): ChebyshevRule {
  const w0 = 1 + DAMPING / (s * s);
  const t = new Float64Array(s + 1);
  const dt = new Float64Array(s + 1);
  const d2t = new Float64Array(s + 1);
  t.set([1, w0]);
  dt.set([0, 1]);
  for (let j = 2; j <= s; j++) {
    t[j] = 2 * w0 * at(t, j - 1) - at(t, j - 2);
    dt[j] = 2 * at(t, j - 1) + 2 * w0 * at(dt, j - 1) - at(dt, j - 2);
    d2t[j] = 4 * at(dt, j - 1) + 2 * w0 * at(d2t, j - 1) - at(d2t, j - 2);
  }
  const w1 = at(dt, s) / at(d2t, s);
  const b = Float64Array.from({ length: s + 1 }, (_, j) => (j < 2 ? 0 : at(d2t, j) / at(dt, j) ** 2));
  b[0] = at(b, 2);
  b[1] = 1 / w0;
  const a = t.map((value, j) => 1 - at(b, j) * value);
  const rule = {
    stages: s,
    firstWeight: at(b, 1) * w1,
    mu: new Float64Array(s + 1),
    nu: new Float64Array(s + 1),
    muTilde: new Float64Array(s + 1),
    gammaTilde: new Float64Array(s + 1),
    places: new Float64Array(s + 1),
  };
  for (let j = 2; j <= s; j++) {
    rule.mu[j] = (2 * at(b, j) * w0) / at(b, j - 1);
    rule.nu[j] = -at(b, j) / at(b, j - 2);
    rule.muTilde[j] = (2 * at(b, j) * w1) / at(b, j - 1);
    rule.gammaTilde[j] = -at(a, j - 1) * at(rule.muTilde, j);
    rule.places[j] = j === s ? 1 : (w1 * at(d2t, j)) / at(dt, j);
  }
  rule.places[1] = rule.firstWeight;
  return rule;
}

function at(values: Float64Array, index: number): number {
  return values[index] ?? Number.NaN;
}

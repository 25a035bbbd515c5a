import type { CoolLeg, CoolValues } from '@larderwright/calc/cooling';
import type { Verdict, VerdictState } from '@larderwright/calc/findings';

/**
 * What to do at the chiller now. `missed`: a leg failed. `done`: every leg met. `act-now`: at this pace a leg
 * will be missed. `act-by`: a leg runs. `unknown`: something is missing.
 */
export type ChillStandKind = 'missed' | 'done' | 'act-now' | 'act-by' | 'unknown';

export interface ChillStand {
  readonly kind: ChillStandKind;
  readonly state: VerdictState;
  /** The verdict to say where nothing else is to be said. */
  readonly verdict: Verdict | null;
  /** The running leg that ends first, its deadline and when it is expected there, epoch ms. */
  readonly next: {
    readonly leg: CoolLeg;
    readonly latestMs: number;
    readonly projectedMs: number | null;
  } | null;
}

type Running = NonNullable<ChillStand['next']>;

function worst(verdicts: readonly Verdict[]): Verdict | null {
  const order: readonly VerdictState[] = ['fail', 'cannot-tell', 'pass'];
  for (const state of order) {
    const found = verdicts.find((verdict) => verdict.state === state);
    if (found) return found;
  }
  return null;
}

/** Legs whose clock runs and whose end is not shown yet, the earliest deadline first. */
function running({ coolings }: CoolValues): Running[] {
  return coolings
    .flatMap(({ logs }) => logs)
    .flatMap(({ legs }) => legs)
    .flatMap(({ leg, judged, state, projectedMs }): Running[] =>
      state !== 'fail' && judged.endLatestMs === null && judged.deadlineMs !== null
        ? [{ leg, latestMs: judged.deadlineMs, projectedMs }]
        : [],
    )
    .sort((a, b) => a.latestMs - b.latestMs);
}

const isLate = ({ latestMs, projectedMs }: Running) => projectedMs !== null && projectedMs > latestMs;

/** Where the cooling stands, the worst leg leading. */
export function chillStandOf(values: CoolValues, verdicts: readonly Verdict[]): ChillStand {
  const verdict = worst(verdicts);
  const state = verdict?.state ?? 'cannot-tell';
  const open = running(values);
  const next = open.find(isLate) ?? open[0] ?? null;
  if (state === 'fail') return { kind: 'missed', state, verdict, next };
  if (state === 'pass') return { kind: 'done', state, verdict, next: null };
  if (next === null) return { kind: 'unknown', state, verdict, next };
  return { kind: isLate(next) ? 'act-now' : 'act-by', state, verdict, next };
}

import type { Verdict, VerdictState } from '@larderwright/calc/findings';
import type { CookLogResult, CookValues } from '@larderwright/calc/lethality';

/** How far one probe is. Times are epoch ms. */
export interface ProbeStand {
  readonly logId: string;
  readonly state: VerdictState;
  /** Newest reading that counts, °C, the probe's offset taken off. */
  readonly lastC: number | null;
  /** The offset changed it. */
  readonly corrected: boolean;
  readonly lastMs: number | null;
  readonly actionC: number | null;
  readonly countedS: number;
  readonly runMs: readonly [from: number, to: number] | null;
  /** The newest reading that counts is at or above the action temperature, inside an unbroken run. */
  readonly holding: boolean;
  /** When the hold is complete if it stays at or above. */
  readonly untilMs: number | null;
  readonly remainingS: number;
}

/**
 * What to do at the stove now. `complete`: the limit was held. `holding`: at or above, not long enough yet.
 * `coming-up`: not there yet. `failed`: heating is over without it. `unchecked`: the cook is open and a probe's
 * offset or error is not entered. `unknown`: something else is missing.
 */
export type StandKind = 'complete' | 'holding' | 'coming-up' | 'failed' | 'unchecked' | 'unknown';

export interface Stand {
  readonly kind: StandKind;
  readonly state: VerdictState;
  readonly probes: readonly ProbeStand[];
  /** The latest of the probes' hold-until moments; null unless every open probe is holding. */
  readonly untilMs: number | null;
  readonly remainingS: number;
}

/** Room for the last digits of a corrected reading. */
const TEMP_EPSILON = 1e-6;

function probeStand({ logId, log, state, readings, hold }: CookLogResult, holdS: number): ProbeStand {
  const newest = readings.findLast((reading) => reading.state !== 'excluded');
  // A newest reading that cannot be or cannot be read has broken whatever run there was.
  const last = newest?.state === 'counts' ? newest : undefined;
  const lastC = last?.tempC ?? null;
  const actionC = hold?.actionC ?? null;
  const holding = state !== 'pass' && actionC !== null && lastC !== null && lastC >= actionC - TEMP_EPSILON;
  return {
    logId,
    state,
    lastC,
    corrected: log.offsetC !== null && log.offsetC !== 0,
    lastMs: last?.atMs ?? null,
    actionC,
    countedS: hold?.countedS ?? 0,
    runMs: hold?.run ? [hold.run.startMs, hold.run.endMs] : null,
    holding,
    untilMs: holding && last && hold ? last.atMs + hold.remainingS * 1000 : null,
    remainingS: hold?.remainingS ?? holdS,
  };
}

/** Where the cook stands, the slowest probe leading. */
export function standOf(values: CookValues, verdict: Verdict): Stand {
  const holdS = values.hold?.s ?? 0;
  const probes = values.logs.map((log) => probeStand(log, holdS));
  const open = probes.filter(({ state }) => state !== 'pass');
  const allHolding = open.length > 0 && open.every(({ holding }) => holding);
  const untilMs = allHolding ? Math.max(...open.map((probe) => probe.untilMs ?? 0)) : null;
  const remainingS = Math.max(0, ...open.map((probe) => probe.remainingS));
  const unchecked = values.logs.some(({ log }) => log.errorC === null || log.offsetC === null);
  const kind = kindOf(verdict, allHolding, unchecked);
  return { kind, state: verdict.state, probes, untilMs: kind === 'holding' ? untilMs : null, remainingS };
}

function kindOf({ state, reason }: Verdict, allHolding: boolean, unchecked: boolean): StandKind {
  if (state === 'pass') return 'complete';
  const openEnded =
    reason === 'cook.open' || reason === 'cook.hold-short' || reason === 'cook.hold-not-shown';
  if (openEnded && allHolding) return 'holding';
  if (state === 'fail') return 'failed';
  if (reason === 'cook.open' && unchecked) return 'unchecked';
  return reason === 'cook.open' ? 'coming-up' : 'unknown';
}

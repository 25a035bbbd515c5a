import { instantMs } from './instant.ts';
import type { ProcessStep } from './slice.ts';

/**
 * One heating and the cooling that follows it, drawn from the steps in the order of the work.
 * Times are milliseconds since 1970 UTC, null where nobody wrote them down.
 */
export interface Phase {
  /** `cook` is judged by the cook's limit; a `reheat` or a cold `smoke` after chilling is not. */
  readonly kind: 'cook' | 'reheat' | 'smoke';
  readonly steps: readonly ProcessStep[];
  readonly startMs: number | null;
  /** End of the last heating step: the earliest moment cooling can have begun. */
  readonly heatEndMs: number | null;
  /** Heating is over: its end is written down, or a chill has begun. */
  readonly heatOver: boolean;
  readonly chillStartMs: number | null;
  readonly chillEndMs: number | null;
  /** Start of the next heating; readings from then on belong to the next phase. */
  readonly endMs: number | null;
}

const EMPTY: Phase = {
  kind: 'cook',
  steps: [],
  startMs: null,
  heatEndMs: null,
  heatOver: false,
  chillStartMs: null,
  chillEndMs: null,
  endMs: null,
};

/** Steps cut before each heating that follows a chill. */
function groups(steps: readonly ProcessStep[]): ProcessStep[][] {
  const out: ProcessStep[][] = [];
  let chilled = false;
  for (const step of steps) {
    const last = out.at(-1);
    if (!last || (chilled && step.kind !== 'chill')) out.push([step]);
    else last.push(step);
    chilled = step.kind === 'chill';
  }
  return out;
}

function phaseOf(
  steps: readonly ProcessStep[],
  index: number,
  next: readonly ProcessStep[] | undefined,
): Phase {
  const heating = steps.filter((step) => step.kind !== 'chill');
  const chills = steps.filter((step) => step.kind === 'chill');
  const kinds = new Set(heating.map((step) => step.kind));
  const kind = kinds.has('cook') || index === 0 ? 'cook' : kinds.has('reheat') ? 'reheat' : 'smoke';
  const heatEndMs = instantMs(heating.at(-1)?.endedAt ?? null);
  const chillStartMs = instantMs(chills.at(0)?.startedAt ?? null);
  return {
    kind,
    steps,
    startMs: instantMs(heating.at(0)?.startedAt ?? null),
    heatEndMs,
    heatOver: heatEndMs !== null || chillStartMs !== null,
    chillStartMs,
    chillEndMs: instantMs(chills.at(-1)?.endedAt ?? null),
    endMs: instantMs(next?.at(0)?.startedAt ?? null),
  };
}

/**
 * Heatings with their coolings, in the order of the work. A smoke before the cook is part of it; every heating after
 * a chill opens a new phase. Without steps there is one phase with no times: the whole of every log.
 */
export function phasesOf(steps: readonly ProcessStep[]): readonly Phase[] {
  const cut = groups(steps);
  return cut.length === 0 ? [EMPTY] : cut.map((group, index) => phaseOf(group, index, cut[index + 1]));
}

/**
 * Whether a moment belongs to a phase. A phase begins with its heating and runs until the next heating;
 * one whose start nobody wrote down takes everything from the end of the phase before.
 */
export function inPhase(phases: readonly Phase[], index: number, ms: number): boolean {
  const phase = phases[index];
  if (!phase) return false;
  if (phase.startMs !== null && ms < phase.startMs) return false;
  const before = phases[index - 1];
  if (phase.startMs === null && before?.chillEndMs != null && ms <= before.chillEndMs) return false;
  if (phase.startMs === null && before && before.chillEndMs === null) return false;
  return phase.endMs === null || ms < phase.endMs;
}

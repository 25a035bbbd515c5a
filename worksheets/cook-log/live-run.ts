import type { LiveCook, LiveForecast } from '@larderwright/calc/cook-plan';
import { instantMs } from '@larderwright/calc/process';
import { atom } from 'nanostores';
import type { CookPlanComputed } from '../cook-plan/compute.ts';
import { $cookPlan } from '../cook-plan/computed.ts';
import { heatCall } from '../heat-desk/index.ts';
import type { CookComputed } from './compute.ts';
import { $cook } from './computed.ts';

/** What a forecast is made from, and which readings of the log it used. */
export interface LiveInput {
  readonly key: string;
  readonly cook: LiveCook;
  readonly startMs: number;
  /** Ids of the readings handed in, at their places. */
  readonly readingIds: readonly string[];
  readonly logName: string;
}

/** Why there is no forecast, as the page says it. */
export type NoForecast = 'no-plan' | 'plan-open' | 'no-start' | 'no-reading';

export interface Live {
  readonly input: LiveInput | null;
  readonly why: NoForecast | null;
  readonly value: LiveForecast | null;
  /** Which input the value is of. */
  readonly madeFrom: LiveInput | null;
  readonly working: boolean;
  readonly failed: string | null;
}

const NOTHING: Live = {
  input: null,
  why: 'no-plan',
  value: null,
  madeFrom: null,
  working: false,
  failed: null,
};
export const $live = atom<Live>(NOTHING);

const DRAWS = 80;
const SEED = 20_261_127;
const SETTLE_MS = 300;
const PAST_DEADLINE = 1.25;
const MS_PER_MIN = 60_000;

/** Readings of the ruling log since the mould went in, those a person left out and those that cannot be read left out. */
function liveInput(cook: CookComputed, plan: CookPlanComputed): LiveInput | NoForecast {
  if (plan.batch.cookPlan === undefined) return 'no-plan';
  const { problem } = plan.ground;
  if (problem === null) return 'plan-open';
  const { steps } = plan.batch.process;
  const startMs = instantMs(steps.find(({ kind }) => kind === 'cook')?.startedAt ?? null);
  if (startMs === null) return 'no-start';
  const { logs, rulingLogId } = cook.values;
  const log =
    logs.find(({ logId }) => logId === rulingLogId) ?? logs.find(({ readings }) => readings.length > 0);
  const used = (log?.readings ?? []).flatMap(({ id, atMs, tempC, state }) =>
    state === 'counts' && tempC !== null && atMs >= startMs
      ? [{ id, timeMin: (atMs - startMs) / MS_PER_MIN, tempC }]
      : [],
  );
  if (log === undefined || used.length === 0) return 'no-reading';
  const endMs = instantMs(steps.findLast(({ kind }) => kind !== 'chill')?.endedAt ?? null);
  const live: LiveCook = {
    problem,
    readings: used.map(({ timeMin, tempC }) => ({ timeMin, tempC })),
    heatEndMin: endMs === null ? null : Math.max(0, (endMs - startMs) / MS_PER_MIN),
  };
  return {
    key: JSON.stringify(live),
    cook: live,
    startMs,
    readingIds: used.map(({ id }) => id),
    logName: cook.names.get(log.logId) ?? log.name,
  };
}

let following = false;
let running: AbortController | null = null;
let timer: ReturnType<typeof setTimeout> | undefined;

/** Follows log and plan, and forecasts anew with every reading. Begun once, by the part that shows it. */
export function followCook(): void {
  if (following) return;
  following = true;
  const look = () => {
    const [cook, plan] = [$cook.get(), $cookPlan.get()];
    if (cook.state !== 'ready' || plan.state !== 'ready') return;
    changedTo(liveInput(cook.value, plan.value));
  };
  $cook.subscribe(look);
  $cookPlan.subscribe(look);
}

function changedTo(input: LiveInput | NoForecast): void {
  const before = $live.get();
  if (typeof input === 'string') {
    running?.abort();
    clearTimeout(timer);
    $live.set({ ...NOTHING, why: input });
    return;
  }
  if (before.input?.key === input.key) return;
  running?.abort();
  clearTimeout(timer);
  $live.set({ ...before, input, why: null, working: true, failed: null });
  timer = setTimeout(() => void forecast(input), SETTLE_MS);
}

async function forecast(input: LiveInput): Promise<void> {
  running = new AbortController();
  const { signal } = running;
  const legs = input.cook.problem.cool?.legs ?? [];
  const chillMostMin = PAST_DEADLINE * Math.max(240, ...legs.map(({ maxMin }) => maxMin));
  try {
    const value = await heatCall<'live'>(
      { kind: 'live', cook: input.cook, draws: DRAWS, seed: SEED, chillMostMin },
      { signal },
    );
    $live.set({ input, why: null, value, madeFrom: input, working: false, failed: null });
  } catch (error) {
    if (signal.aborted) return;
    const failed = error instanceof Error ? error.message : String(error);
    $live.set({ input, why: null, value: null, madeFrom: null, working: false, failed });
  }
}

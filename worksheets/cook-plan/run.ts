import type {
  CarryOverPull,
  DepthRow,
  PlanBands,
  PlanChange,
  PlanOutcome,
  PlanProblem,
} from '@larderwright/calc/cook-plan';
import { DEPTHS_MM } from '@larderwright/calc/cook-plan';
import { atom } from 'nanostores';
import * as say from '#words/cook-plan/run.ts';
import { heatCall } from '../heat-desk/index.ts';
import type { CookPlanComputed } from './compute.ts';
import { $cookPlan } from './computed.ts';

/** Something that the worker makes of the plan. Stale: the plan has changed since. */
export interface Worked<T> {
  readonly key: string;
  readonly value: T | null;
  readonly stale: boolean;
  readonly working: boolean;
  /** How much is done, 0–1. */
  readonly done: number;
  readonly failed: string | null;
}

const nothing = { key: '', value: null, stale: false, working: false, done: 0, failed: null } as const;

export const $outcome = atom<Worked<PlanOutcome>>(nothing);
export const $pull = atom<Worked<CarryOverPull>>(nothing);
export const $bands = atom<Worked<PlanBands>>(nothing);
export const $depths = atom<Worked<readonly DepthRow[]>>(nothing);

/** What is being tried out beside the plan; null while nothing is. */
export interface Trial {
  readonly change: PlanChange;
  readonly outcome: PlanOutcome | null;
  readonly working: boolean;
  /** The change leaves no plan to compute. */
  readonly impossible: boolean;
}
export const $trial = atom<Trial | null>(null);

const PICTURE_EVERY_MIN = 5;
const TRIAL_PICTURE_EVERY_MIN = 10;
/** Kitchens drawn for the band, and where the draw begins: the same kitchens every time. */
export const DRAWS = 200;
const SEED = 20_261_127;
/** A chill is followed this far past what the rule allows, as a share, in a draw. */
const PAST_DEADLINE = 1.25;
/** Typing settles for so long before the worker is asked, ms. */
const SETTLE_MS = 250;

let running: AbortController | null = null;
let bandsRunning: AbortController | null = null;
let timer: ReturnType<typeof setTimeout> | undefined;

/** Follows the plan on the bench and has each new problem simulated. Begun once, by the part that shows it. */
export function followPlan(): void {
  if (following) return;
  following = true;
  $cookPlan.subscribe((derived) => {
    if (derived.state === 'ready') changedTo(derived.value);
    else if (derived.state === 'not-yet') forget();
  });
}
let following = false;

function forget(): void {
  running?.abort();
  bandsRunning?.abort();
  clearTimeout(timer);
  for (const store of [$outcome, $pull, $bands, $depths]) store.set(nothing);
  $trial.set(null);
}

function changedTo({ key, ground }: CookPlanComputed): void {
  if (key === $outcome.get().key && !$outcome.get().stale) return;
  running?.abort();
  bandsRunning?.abort();
  clearTimeout(timer);
  $trial.set(null);
  const old = <T>(worked: Worked<T>): Worked<T> => ({
    ...worked,
    stale: worked.value !== null,
    working: false,
    failed: null,
  });
  $outcome.set({ ...old($outcome.get()), working: key !== '' });
  $pull.set(old($pull.get()));
  $bands.set(old($bands.get()));
  $depths.set(old($depths.get()));
  const { problem } = ground;
  if (problem === null) return;
  timer = setTimeout(() => void compute(key, problem), SETTLE_MS);
}

async function compute(key: string, problem: PlanProblem): Promise<void> {
  running = new AbortController();
  const { signal } = running;
  try {
    const outcome = await heatCall<'solve'>(
      { kind: 'solve', problem, tier: 'exact', pictureEveryMin: PICTURE_EVERY_MIN },
      { signal },
    );
    $outcome.set({ ...nothing, key, value: outcome, failed: outcome === null ? say.refused : null });
    if (outcome === null) return;
    const pull = await heatCall<'pull'>({ kind: 'pull', problem }, { signal });
    $pull.set({ ...nothing, key, value: pull });
    await drawBands(key, problem);
  } catch (error) {
    if (!signal.aborted) $outcome.set({ ...nothing, key, failed: detailOf(error) });
  }
}
const detailOf = (error: unknown) => (error instanceof Error ? error.message : String(error));

/** Draws the kitchens of the band. */
async function drawBands(key: string, problem: PlanProblem): Promise<void> {
  bandsRunning?.abort();
  bandsRunning = new AbortController();
  const { signal } = bandsRunning;
  $bands.set({ ...nothing, key, working: true });
  const longestLegMin = Math.max(240, ...(problem.cool?.legs ?? []).map(({ maxMin }) => maxMin));
  try {
    const bands = await heatCall<'bands'>(
      { kind: 'bands', problem, draws: DRAWS, seed: SEED, chillMostMin: PAST_DEADLINE * longestLegMin },
      {
        signal,
        onProgress: (done) => $bands.set({ ...nothing, key, working: true, done }),
      },
    );
    $bands.set({ ...nothing, key, value: bands, failed: bands === null ? say.refused : null });
  } catch (error) {
    $bands.set({ ...nothing, key, failed: signal.aborted ? 'stopped' : detailOf(error) });
  }
}

/** Stops the drawing of the band. */
export function stopBands(): void {
  bandsRunning?.abort();
}

/** Draws it again after a stop. */
export function drawAgain(): void {
  const derived = $cookPlan.get();
  if (derived.state !== 'ready' || derived.value.ground.problem === null) return;
  void drawBands(derived.value.key, derived.value.ground.problem);
}

/** The same plan in moulds of other depths. */
export async function layDepths(): Promise<void> {
  const derived = $cookPlan.get();
  if (derived.state !== 'ready') return;
  const { key, changed } = derived.value;
  const problems = DEPTHS_MM.map((depthMm) => ({ depthMm, problem: changed({ depthMm }).problem }));
  $depths.set({ ...nothing, key, working: true });
  const still = () =>
    $cookPlan.get().state === 'ready' && $outcome.get().key === key && !$outcome.get().stale;
  try {
    const rows = await heatCall<'depths'>(
      { kind: 'depths', problems },
      { onProgress: (done) => still() && $depths.set({ ...nothing, key, working: true, done }) },
    );
    if (still()) $depths.set({ ...nothing, key, value: rows });
  } catch (error) {
    $depths.set({ ...nothing, key, failed: detailOf(error) });
  }
}

let trying = false;
let next: { change: PlanChange; tier: 'exact' | 'preview' } | null = null;

/**
 * Tries a change beside the plan. While a slider moves the preview answers, the newest place first; on release exact.
 */
export function tryOut(change: PlanChange, released: boolean): void {
  $trial.set({ change, outcome: $trial.get()?.outcome ?? null, working: true, impossible: false });
  next = { change, tier: released ? 'exact' : 'preview' };
  if (!trying) void tryNext();
}

async function tryNext(): Promise<void> {
  trying = true;
  while (next !== null) {
    const { change, tier } = next;
    next = null;
    const derived = $cookPlan.get();
    const problem = derived.state === 'ready' ? derived.value.changed(change).problem : null;
    const answer =
      problem &&
      (await heatCall<'solve'>({
        kind: 'solve',
        problem,
        tier,
        pictureEveryMin: TRIAL_PICTURE_EVERY_MIN,
      }).catch(() => null));
    if ($trial.get() === null) break;
    $trial.set({
      change: $trial.get()?.change ?? change,
      outcome: answer,
      working: next !== null,
      impossible: answer === null,
    });
  }
  trying = false;
}

/** Puts the sliders back to the plan. */
export function endTrial(): void {
  next = null;
  $trial.set(null);
}

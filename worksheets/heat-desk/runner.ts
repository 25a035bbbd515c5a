import { type HeatAnswer, type HeatTask, runTask } from './tasks.ts';

/** What the page tells the worker. */
export type ToRunner =
  | { readonly say: 'do'; readonly id: number; readonly task: HeatTask }
  | { readonly say: 'drop'; readonly id: number };

/** What the worker tells the page. */
export type FromRunner =
  | { readonly say: 'progress'; readonly id: number; readonly done: number }
  | { readonly say: 'answer'; readonly id: number; readonly answer: HeatAnswer }
  | { readonly say: 'failed'; readonly id: number; readonly detail: string };

interface Job {
  readonly id: number;
  readonly kind: HeatTask['kind'];
  readonly steps: Generator<number, HeatAnswer>;
}

/** A slider waits for nothing longer than one draw of a band. */
const FIRST: readonly HeatTask['kind'][] = ['solve', 'pull'];
/** Messages are let in this often, ms. */
const BREATH_MS = 12;

/**
 * Works through tasks piece by piece, the short ones first, and can be told to drop one.
 *
 * @param post sends a message back
 * @param breathe lets waiting messages in
 * @param now milliseconds of any clock
 */
export function heatRunner(
  post: (message: FromRunner) => void,
  breathe: () => Promise<void>,
  now: () => number,
): (message: ToRunner) => void {
  const jobs: Job[] = [];
  let working = false;

  async function work(): Promise<void> {
    working = true;
    let breathed = now();
    while (jobs.length > 0) {
      const job = jobs.find(({ kind }) => FIRST.includes(kind)) ?? jobs[0];
      if (job === undefined) break;
      step(job);
      if (now() - breathed < BREATH_MS) continue;
      await breathe();
      breathed = now();
    }
    working = false;
  }

  function step(job: Job): void {
    const { id, steps } = job;
    try {
      const next = steps.next();
      if (!next.done) {
        post({ say: 'progress', id, done: next.value });
        return;
      }
      post({ say: 'answer', id, answer: next.value });
    } catch (error) {
      post({ say: 'failed', id, detail: error instanceof Error ? error.message : String(error) });
    }
    drop(id);
  }

  function drop(id: number): void {
    const place = jobs.findIndex((job) => job.id === id);
    if (place >= 0) jobs.splice(place, 1);
  }

  return (message) => {
    if (message.say === 'drop') {
      drop(message.id);
      return;
    }
    const { id, task } = message;
    jobs.push({ id, kind: task.kind, steps: runTask(task) });
    if (!working) void work();
  };
}

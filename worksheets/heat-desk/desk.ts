import type { FromRunner, ToRunner } from './runner.ts';
import type { HeatAnswers, HeatTask } from './tasks.ts';

/** The part of a worker that the desk uses. */
export interface HeatWorker {
  send: (message: ToRunner) => void;
  close: () => void;
}

/** Makes a worker, or throws where there can be none. */
export type HireWorker = (
  onMessage: (message: FromRunner) => void,
  onCrash: (detail: string) => void,
) => HeatWorker;

export interface CallOptions {
  /** How much is done, 0–1. */
  readonly onProgress?: (done: number) => void;
  /** Aborting it drops the task; the call then rejects with the signal's reason. */
  readonly signal?: AbortSignal;
}

interface Call {
  readonly id: number;
  readonly task: HeatTask;
  readonly onProgress: ((done: number) => void) | undefined;
  readonly resolve: (answer: never) => void;
  readonly reject: (reason: unknown) => void;
  /** Workers that have crashed over it. */
  crashes: number;
}

/** A task that brought down this many workers is done on the page instead. */
const MOST_CRASHES = 2;

/**
 * The one typed call for heavy heat work. A worker is hired with the first call. One that crashes is replaced and its
 * tasks are given to the next; what crashes again, or finds no worker at all, is done on the page, with the same answer.
 *
 * @param hire makes a worker
 * @param onPage does a task without one; fetched only when needed
 */
export function heatDesk(
  hire: HireWorker,
  onPage: (task: HeatTask, options: CallOptions) => Promise<unknown>,
) {
  const calls = new Map<number, Call>();
  let worker: HeatWorker | null = null;
  let nextId = 1;

  const receive = (message: FromRunner) => {
    const call = calls.get(message.id);
    if (call === undefined) return;
    if (message.say === 'progress') {
      call.onProgress?.(message.done);
      return;
    }
    calls.delete(message.id);
    if (message.say === 'answer') call.resolve(message.answer as never);
    else call.reject(new Error(message.detail));
  };

  const crashed = (which: HeatWorker | null) => {
    if (which !== null && which !== worker) return;
    worker?.close();
    worker = null;
    for (const call of calls.values()) {
      call.crashes += 1;
      give(call);
    }
  };

  const give = (call: Call) => {
    if (call.crashes < MOST_CRASHES) {
      try {
        worker ??= hired();
        worker.send({ say: 'do', id: call.id, task: call.task });
        return;
      } catch {
        worker = null;
      }
    }
    const left = () => calls.delete(call.id);
    const options = call.onProgress ? { onProgress: call.onProgress } : {};
    onPage(call.task, options).then(
      (answer) => left() && call.resolve(answer as never),
      (error) => left() && call.reject(error),
    );
  };

  const hired = (): HeatWorker => {
    let own: HeatWorker | null = null;
    own = hire(receive, () => crashed(own));
    return own;
  };

  return <Kind extends HeatTask['kind']>(
    task: Extract<HeatTask, { kind: Kind }>,
    { onProgress, signal }: CallOptions = {},
  ): Promise<HeatAnswers[Kind]> =>
    new Promise((resolve, reject) => {
      if (signal?.aborted) {
        reject(signal.reason);
        return;
      }
      const id = nextId++;
      const call: Call = { id, task, onProgress, resolve, reject, crashes: 0 };
      calls.set(id, call);
      signal?.addEventListener('abort', () => {
        if (!calls.delete(id)) return;
        worker?.send({ say: 'drop', id });
        reject(signal.reason);
      });
      give(call);
    });
}

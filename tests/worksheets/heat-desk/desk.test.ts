import { describe, expect, it } from 'vitest';
import { type HeatWorker, type HireWorker, heatDesk } from '../../../worksheets/heat-desk/desk.ts';
import { runOnPage } from '../../../worksheets/heat-desk/on-page.ts';
import { heatRunner } from '../../../worksheets/heat-desk/runner.ts';
import { type HeatTask, runTask } from '../../../worksheets/heat-desk/tasks.ts';
import { contextOf, LOAF, mouldOf, planTo68, problemOf } from '../../calc/cook-plan/plans.ts';

const problem = problemOf(planTo68(), contextOf(mouldOf(LOAF), { coolRuleSetId: 'us-food-code' }));
const solve = { kind: 'solve', problem, tier: 'preview', pictureEveryMin: 30 } as const;
const bands = { kind: 'bands', problem, draws: 6, seed: 11, chillMostMin: 60 } as const;
const TASKS: readonly HeatTask[] = [
  solve,
  bands,
  {
    kind: 'depths',
    problems: [
      { depthMm: 60, problem },
      { depthMm: 70, problem: null },
    ],
  },
  { kind: 'pull', problem },
];

/** What the task gives when it is simply run to its end. */
function plainly(task: HeatTask): unknown {
  const steps = runTask(task);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

/** A worker without a thread: its own turn of the loop, and copies of everything that crosses over. */
function hireRunner(crashOn: (count: number) => boolean = () => false) {
  let messages = 0;
  const hired: HeatWorker[] = [];
  const hire: HireWorker = (onMessage, onCrash) => {
    let open = true;
    const breathe = () => new Promise<void>((resolve) => setImmediate(() => resolve()));
    // Twenty milliseconds pass at every look at the clock: it breathes after each piece.
    let clockMs = 0;
    const now = () => {
      clockMs += 20;
      return clockMs;
    };
    const run = heatRunner((message) => open && onMessage(structuredClone(message)), breathe, now);
    const worker: HeatWorker = {
      send: (message) => {
        messages += 1;
        const count = messages;
        const copy = structuredClone(message);
        setImmediate(() => {
          if (!open) return;
          if (copy.say === 'do' && crashOn(count)) onCrash('gone');
          else run(copy);
        });
      },
      close: () => {
        open = false;
      },
    };
    hired.push(worker);
    return worker;
  };
  return { hire, hired };
}

const onPage = (task: HeatTask, options: Parameters<typeof runOnPage>[1]) => runOnPage(task, options);
const never = () => Promise.reject(new Error('the page was asked'));

describe('heavy work', () => {
  it.each(TASKS.map((task) => [task.kind, task] as const))(
    '%s: the worker answers what the page answers, to the last digit',
    async (_, task) => {
      const call = heatDesk(hireRunner().hire, never);
      const answer = await call(task as never);
      expect(answer).toEqual(plainly(task));
      expect(await runOnPage(task, {})).toEqual(answer);
    },
  );

  it('hires one worker, and only when asked', async () => {
    const { hire, hired } = hireRunner();
    const call = heatDesk(hire, never);
    expect(hired).toHaveLength(0);
    await Promise.all([call(solve), call(bands)]);
    expect(hired).toHaveLength(1);
  });

  it('tells its progress, and a short task overtakes a long one', async () => {
    const call = heatDesk(hireRunner().hire, never);
    const done: number[] = [];
    const order: string[] = [];
    await Promise.all([
      call(bands, { onProgress: (share) => done.push(share) }).then(() => order.push('bands')),
      call(solve).then(() => order.push('solve')),
    ]);
    expect(order).toEqual(['solve', 'bands']);
    expect(done).toHaveLength(6);
    expect(done.at(-1)).toBe(1);
    expect(done.toSorted((a, b) => a - b)).toEqual(done);
  });

  it('drops what is cancelled and goes on with the rest', async () => {
    const call = heatDesk(hireRunner().hire, never);
    const stop = new AbortController();
    const done: number[] = [];
    const dropped = call(bands, {
      signal: stop.signal,
      onProgress: (share) => {
        done.push(share);
        stop.abort();
      },
    });
    await expect(dropped).rejects.toThrow(/abort/i);
    expect(await call(solve)).toEqual(plainly(solve));
    expect(done).toHaveLength(1);
    await expect(call(solve, { signal: stop.signal })).rejects.toThrow(/abort/i);
  });

  it('comes to the same answer after a worker has crashed', async () => {
    const { hire, hired } = hireRunner((count) => count === 1);
    const call = heatDesk(hire, never);
    expect(await call(solve)).toEqual(plainly(solve));
    expect(hired).toHaveLength(2);
  });

  it('does it on the page when every worker crashes or none can be had', async () => {
    const crashing = heatDesk(hireRunner(() => true).hire, onPage);
    expect(await crashing(solve)).toEqual(plainly(solve));
    const without = heatDesk(() => {
      throw new Error('no workers here');
    }, onPage);
    expect(await without(bands)).toEqual(plainly(bands));
  });

  it('passes a failure on instead of crashing the worker', async () => {
    const call = heatDesk(hireRunner().hire, never);
    const broken = { ...solve, problem: { ...problem, stages: null } } as never;
    await expect(call(broken)).rejects.toThrow();
    expect(await call(solve)).toEqual(plainly(solve));
  });
});

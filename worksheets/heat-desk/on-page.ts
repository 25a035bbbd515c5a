import type { CallOptions } from './desk.ts';
import { type HeatAnswer, type HeatTask, runTask } from './tasks.ts';

/** Longest the page is kept from drawing, ms. */
const FRAME_MS = 12;

/** Does a task on the page, with a breath between its pieces. */
export async function runOnPage(task: HeatTask, { onProgress }: CallOptions): Promise<HeatAnswer> {
  const steps = runTask(task);
  let since = performance.now();
  for (;;) {
    const next = steps.next();
    if (next.done) return next.value;
    onProgress?.(next.value);
    if (performance.now() - since < FRAME_MS) continue;
    await new Promise((resolve) => setTimeout(resolve));
    since = performance.now();
  }
}

import * as say from '#words/heat-desk/index.ts';
import { ownWorker } from '../parts/own-worker.ts';
import { type HeatWorker, type HireWorker, heatDesk } from './desk.ts';
import address from './heat.worker.ts?worker&url';
import type { FromRunner } from './runner.ts';

const hire: HireWorker = (onMessage, onCrash): HeatWorker => {
  const worker = ownWorker(address);
  worker.addEventListener('message', (event: MessageEvent<FromRunner>) => onMessage(event.data));
  worker.addEventListener('error', (event) => onCrash(event.message ?? say.theWorkerStopped));
  worker.addEventListener('messageerror', () => onCrash(say.aMessageCouldNotBeRead));
  return { send: (message) => worker.postMessage(message), close: () => worker.terminate() };
};

/** Heavy heat work, away from the page: one typed call with progress and cancel. Nothing is loaded before the first. */
export const heatCall = heatDesk(hire, async (task, options) =>
  (await import('./on-page.ts')).runOnPage(task, options),
);

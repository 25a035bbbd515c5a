import { heatRunner, type ToRunner } from './runner.ts';

/** A message to oneself is the shortest way to let the others in. */
const channel = new MessageChannel();
const waiting: (() => void)[] = [];
channel.port1.onmessage = () => waiting.shift()?.();
const breathe = () =>
  new Promise<void>((resolve) => {
    waiting.push(resolve);
    channel.port2.postMessage(null);
  });

const run = heatRunner(
  (message) => postMessage(message),
  breathe,
  () => performance.now(),
);
addEventListener('message', (event: MessageEvent<ToRunner>) => run(event.data));

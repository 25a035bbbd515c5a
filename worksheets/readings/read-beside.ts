import { ownWorker } from '../parts/own-worker.ts';
import type { PasteJob, PasteRead } from './paste-job.ts';
import address from './paste-worker.ts?worker&url';

/** Shorter logs are read on the spot: a worker takes longer to start. */
const BESIDE_FROM = 100_000;

function inWorker(job: PasteJob, signal: AbortSignal): Promise<PasteRead> {
  return new Promise((resolve, reject) => {
    const worker = ownWorker(address);
    const end = () => worker.terminate();
    worker.addEventListener('message', ({ data }: MessageEvent<PasteRead>) => {
      end();
      resolve(data);
    });
    worker.addEventListener('error', (event) => {
      end();
      reject(new Error(event.message));
    });
    signal.addEventListener('abort', end);
    worker.postMessage(job);
  });
}

/**
 * Reads a log without holding up the page.
 *
 * @param signal when aborted, the promise may stay open for ever: nobody waits for it any more
 */
export async function readBeside(job: PasteJob, signal: AbortSignal): Promise<PasteRead> {
  if (job.text.length >= BESIDE_FROM) {
    try {
      return await inWorker(job, signal);
    } catch {
      // No workers here: the page waits, and the log is read all the same.
    }
  }
  const { runPaste } = await import('./paste-job.ts');
  return runPaste(job);
}

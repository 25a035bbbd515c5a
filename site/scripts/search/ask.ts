import { ownWorker } from '../../../worksheets/parts/own-worker.ts';
import type { Answers, Question, Reply } from './messages.ts';
import address from './search.worker.ts?worker&url';

type Asked<Ask extends Question['ask']> = Omit<Extract<Question, { ask: Ask }>, 'id'>;
interface Waiting {
  readonly resolve: (answer: never) => void;
  readonly reject: (reason: Error) => void;
}

let worker: Worker | null = null;
let lastId = 0;
const waiting = new Map<number, Waiting>();

/** A worker that cannot be loaded fails what was asked; the next question tries again. */
function give(): Worker {
  const made = ownWorker(address);
  made.addEventListener('message', ({ data: reply }: MessageEvent<Reply>) => {
    const call = waiting.get(reply.id);
    waiting.delete(reply.id);
    if ('failed' in reply) call?.reject(new Error('the index could not be read'));
    else call?.resolve(reply.answer as never);
  });
  made.addEventListener('error', () => {
    made.terminate();
    worker = null;
    for (const call of waiting.values()) call.reject(new Error('the search stopped'));
    waiting.clear();
  });
  return made;
}

/** Asks the search worker, which is fetched with the first question. */
export function askSearch<Ask extends Question['ask']>(asked: Asked<Ask>): Promise<Answers[Ask]> {
  return new Promise((resolve, reject) => {
    const id = ++lastId;
    waiting.set(id, { resolve, reject });
    try {
      worker ??= give();
      worker.postMessage({ id, ...asked });
    } catch (error) {
      waiting.delete(id);
      reject(error instanceof Error ? error : new Error('no worker'));
    }
  });
}

import type { BatchState } from '@larderwright/calc/batch';

/** The states of a batch, as they stand in a sentence. */
export const STATE_WORDS: Readonly<Record<BatchState, string>> = {
  planned: 'planned',
  'in-process': 'in process',
  held: 'held',
  released: 'released',
  discarded: 'discarded',
};

import type { HistoryEntry } from '@larderwright/calc/batch';
import { atom } from 'nanostores';

/**
 * The history of the batch on screen as it lies on the device. It runs ahead of the batch's own, for a write that only
 * adds to the history must not make every worksheet compute again.
 */
export const $history = atom<{ batchId: string; history: readonly HistoryEntry[] } | null>(null);

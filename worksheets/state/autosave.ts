import type { Batch } from '@larderwright/calc/batch';
import { $batch, $notice, emptyBatch } from './store.ts';

/** Edits are on disk this long after the first of a burst: well inside the promised half second. */
const SAVE_AFTER_MS = 200;

let timer: ReturnType<typeof setTimeout> | undefined;
let unsaved: Batch | null = null;
let saved: Batch | null = null;

/** Tells that this very batch was just read from the device: showing it is no edit. */
export function markSaved(batch: Batch): void {
  saved = batch;
}

async function write(): Promise<void> {
  clearTimeout(timer);
  timer = undefined;
  const batch = unsaved;
  if (!batch) return;
  unsaved = null;
  try {
    const { saveBatch } = await import('./storage.ts');
    await saveBatch(batch);
    if ($notice.get()?.id === 'storage-failed') $notice.set(null);
  } catch (error) {
    unsaved ??= batch;
    $notice.set({ id: 'storage-failed', detail: error instanceof Error ? error.message : String(error) });
  }
}

/** Keeps the record on this device from the first edit on. Returns the way to stop. */
export function startAutosave(): () => void {
  // Asked at once too: the first typing of a page can come before this begins.
  const stop = $batch.subscribe((batch) => {
    if (batch.id === emptyBatch.id || batch === saved) return;
    unsaved = batch;
    timer ??= setTimeout(write, SAVE_AFTER_MS);
  });
  const flush = () => void write();
  addEventListener('pagehide', flush);
  document.addEventListener('visibilitychange', flush);
  return () => {
    stop();
    removeEventListener('pagehide', flush);
    document.removeEventListener('visibilitychange', flush);
    clearTimeout(timer);
    timer = undefined;
  };
}

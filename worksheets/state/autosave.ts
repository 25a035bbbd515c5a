import type { Batch } from '@larderwright/calc/batch';
import { isSaved } from './shown.ts';
import { $batch, $notice, emptyBatch } from './store.ts';
import { troubleOf } from './trouble.ts';

/** Edits are on disk this long after the first of a burst: well inside the promised half second. */
const SAVE_AFTER_MS = 200;

let timer: ReturnType<typeof setTimeout> | undefined;
let unsaved: Batch | null = null;

const fetchKeeper = () => import('./keeper.ts');

async function write(): Promise<void> {
  clearTimeout(timer);
  timer = undefined;
  const batch = unsaved;
  if (!batch) return;
  unsaved = null;
  try {
    const { keepEdit } = await fetchKeeper();
    await keepEdit(batch);
    if (/^storage-(?!cleared)/.test($notice.get()?.id ?? '')) $notice.set(null);
  } catch (error) {
    unsaved ??= batch;
    $notice.set(troubleOf(error));
  }
}

/** Keeps the record on this device from the first edit on. Returns the way to stop. */
export function startAutosave(): () => void {
  // Asked at once too: the first typing of a page can come before this begins.
  const stop = $batch.subscribe((batch) => {
    if (batch.id === emptyBatch.id || isSaved(batch)) return;
    unsaved = batch;
    timer ??= setTimeout(write, SAVE_AFTER_MS);
  });
  // Ahead of everything that only shows: on a weak network what is typed must not wait for it.
  fetchKeeper().catch(() => {});
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

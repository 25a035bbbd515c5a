import type { Batch } from '@larderwright/calc/batch';
import { markSaved } from './autosave.ts';
import { newId, nowIso } from './clock.ts';
import { $batch, $life, $notice, emptyBatch, withSlices } from './store.ts';

/** Puts a batch on the bench without saving it again. */
function show(stored: Batch): void {
  const batch = withSlices(stored);
  markSaved(batch);
  $batch.set(batch);
  $life.set('open');
}

async function openStored(id: string): Promise<boolean> {
  const [{ rawBatch, setAside }, { readBatch }] = await Promise.all([
    import('./storage.ts'),
    import('./read-record.ts'),
  ]);
  const raw = await rawBatch(id);
  if (raw === undefined) return false;
  const read = readBatch(raw);
  if (read.ok) {
    show(read.batch);
    return true;
  }
  if (read.problem === 'newer-version') {
    $notice.set({ id: 'record-newer', detail: String(read.version) });
  } else {
    await setAside(id, nowIso(), raw);
    $notice.set({ id: 'record-damaged', detail: read.path });
  }
  return false;
}

/**
 * Opens a demo batch: the copy on this device if there is one, else the original.
 * `fresh` puts the original back in place of the copy.
 */
export async function openDemo(slug: string, demoBase: string, fresh = false): Promise<void> {
  const [{ saveBatch }, { readBatch }] = await Promise.all([
    import('./storage.ts'),
    import('./read-record.ts'),
  ]);
  const id = `demo-${slug}`;
  if (!fresh) {
    try {
      if (await openStored(id)) {
        await saveBatch($batch.get());
        return;
      }
    } catch {
      // No storage: the original is still worth showing.
    }
  }
  const response = await fetch(`${demoBase}${encodeURIComponent(slug)}.json`);
  const read = response.ok ? readBatch(await response.json()) : null;
  if (!read?.ok) {
    $notice.set({ id: 'demo-missing', detail: slug });
    return;
  }
  show(read.batch);
  await saveBatch(read.batch);
}

/** Clears the bench for a new batch. The old record stays on the device. */
async function openNew(): Promise<void> {
  const { clearCurrent } = await import('./storage.ts');
  await clearCurrent();
  $batch.set(emptyBatch);
  $life.set('blank');
}

/** A copy of the batch on the bench under a new id, for changing a demo without losing it. */
export function keepAsOwn(): void {
  $batch.set({ ...$batch.get(), id: newId(), demo: false, createdAt: nowIso(), updatedAt: nowIso() });
}

/**
 * Opens what the address asks for (`#demo=…`, `#new`), else the batch last on the bench.
 * The request is taken out of the address, so that a reload shows the edited batch.
 */
export async function openFromAddress(demoBase: string): Promise<void> {
  const asked = new URLSearchParams(location.hash.slice(1));
  const demo = asked.get('demo');
  const wantsNew = location.hash === '#new';
  if (demo !== null || wantsNew) history.replaceState(null, '', location.pathname + location.search);
  try {
    if (demo !== null) return await openDemo(demo, demoBase);
    if (wantsNew) return await openNew();
    // Something was typed before the page had looked: that batch stays.
    if ($life.get() === 'open') return;
    const { currentId } = await import('./storage.ts');
    const id = await currentId();
    if (id === null) return;
    if (!(await openStored(id)) && $notice.get() === null) $notice.set({ id: 'batch-missing', detail: id });
  } catch (error) {
    $notice.set({ id: 'storage-failed', detail: error instanceof Error ? error.message : String(error) });
  } finally {
    if ($life.get() === 'waking') $life.set('blank');
  }
}

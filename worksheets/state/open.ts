import { benchId } from './bench-id.ts';
import { clearCurrent, currentId } from './bench-record.ts';
import { $batch, $life, $notice, emptyBatch } from './store.ts';
import { troubleOf } from './trouble.ts';

const fetchShow = () => import('./show.ts');

/** Clears the bench for a new batch. The old record stays on the device. */
async function openNew(): Promise<void> {
  await clearCurrent();
  $batch.set(emptyBatch);
  $life.set('blank');
}

/**
 * Opens what the address asks for (`#demo=…`, `#batch=…`, `#new`), else the batch last on the bench.
 * The request is taken out of the address, so that a reload shows the edited batch.
 */
export async function openFromAddress(demoBase: string): Promise<void> {
  const asked = new URLSearchParams(location.hash.slice(1));
  const demo = asked.get('demo');
  const batch = asked.get('batch');
  const wantsNew = location.hash === '#new';
  if (demo !== null || batch !== null || wantsNew)
    history.replaceState(null, '', location.pathname + location.search);
  // This tab had a batch: what shows it is on its way while the device is asked.
  if (benchId()) fetchShow().catch(() => {});
  try {
    if (demo !== null) return await (await fetchShow()).openDemo(demo, demoBase);
    if (wantsNew) return await openNew();
    // Something was typed before the page had looked: that batch stays.
    if (batch === null && $life.get() === 'open') return;
    const id = batch ?? (await currentId());
    if (id === null) return;
    await (await fetchShow()).openById(id, batch !== null);
  } catch (error) {
    $notice.set(troubleOf(error));
  } finally {
    if ($life.get() === 'waking') $life.set('blank');
  }
}

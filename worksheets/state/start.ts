import { startAutosave } from './autosave.ts';
import { $life, $notice } from './store.ts';
import { troubleOf } from './trouble.ts';

let started = false;

/** What the address may ask for: a demo, a batch of this device, an empty bench. */
const ASKED = /^#(?:demo=|batch=|new$)/;

async function open(demoBase: string): Promise<void> {
  try {
    const { openFromAddress } = await import('./open.ts');
    await openFromAddress(demoBase);
  } catch (error) {
    $notice.set(troubleOf(error));
    if ($life.get() === 'waking') $life.set('blank');
  }
}

/** Wakes the page's batch: looks for a saved one and keeps every edit. Safe to call from every island. */
export function startBatch(demoBase: string): void {
  if (started) return;
  started = true;
  startAutosave();
  void open(demoBase);
  addEventListener('hashchange', () => {
    if (ASKED.test(location.hash)) void open(demoBase);
  });
}

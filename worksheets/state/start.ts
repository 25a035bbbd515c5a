import { startAutosave } from './autosave.ts';
import { openFromAddress } from './open.ts';

let started = false;

/** Wakes the page's batch: looks for a saved one and keeps every edit. Safe to call from every island. */
export function startBatch(demoBase: string): void {
  if (started) return;
  started = true;
  startAutosave();
  void openFromAddress(demoBase);
  addEventListener('hashchange', () => {
    if (/^#(demo=|new$)/.test(location.hash)) void openFromAddress(demoBase);
  });
}

import { readEntry } from '../quantities/index.ts';
import type { BinderSlice } from './slice.ts';

/** A side of the mould as typed, else the mould's own. Unreadable is unknown. */
export function sideOf(entry: BinderSlice['mouldWidth'], ownMm: number | null): number | null {
  const typed = readEntry('length', entry);
  return typed.state === 'blank' ? ownMm : typed.state === 'ok' ? typed.value : null;
}

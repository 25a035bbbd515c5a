import { atom } from 'nanostores';
import { byUrgency, type Clock, type ClockKind, isClock } from './clock.ts';
import { CLOCKS_KEY } from './kept-clocks.ts';

/*
 * The running clocks of this device, one JSON text in localStorage. They belong to the device, not to the record: a clock
 * calls whoever stands here, proves nothing, and must neither travel with a copy of a batch nor change its history and its
 * checksum. What it counts from does stand in the record, as the start of a step or as readings; those clocks are drawn from
 * the record anew whenever it is on screen. The list of all batches' clocks needs no record opened.
 */

export interface ClocksState {
  readonly clocks: readonly Clock[];
  /** Why the device does not keep them; null: it does. They then live as long as the page. */
  readonly notKept: string | null;
}

export const $clocks = atom<ClocksState>({ clocks: [], notKept: null });

function kept(): Clock[] {
  const raw: unknown = JSON.parse(localStorage.getItem(CLOCKS_KEY) ?? '[]');
  return Array.isArray(raw) ? raw.filter(isClock) : [];
}

/** Looks at what is kept. */
function lookAtClocks(): readonly Clock[] {
  const { notKept } = $clocks.get();
  if (notKept !== null) return $clocks.get().clocks;
  try {
    $clocks.set({ clocks: kept().toSorted(byUrgency), notKept: null });
  } catch {
    // Unreadable: stage and limit come back from the record.
    $clocks.set({ clocks: [], notKept: null });
  }
  return $clocks.get().clocks;
}

const sameClocks = (a: readonly Clock[], b: readonly Clock[]) => JSON.stringify(a) === JSON.stringify(b);

/** Changes the clocks as they lie there now. */
export function changeClocks(change: (clocks: readonly Clock[]) => readonly Clock[]): void {
  const before = lookAtClocks();
  const clocks = change(before).toSorted(byUrgency);
  if (sameClocks(before, clocks)) return;
  try {
    if (clocks.length === 0) localStorage.removeItem(CLOCKS_KEY);
    else localStorage.setItem(CLOCKS_KEY, JSON.stringify(clocks));
    $clocks.set({ clocks, notKept: null });
  } catch (error) {
    $clocks.set({ clocks, notKept: error instanceof Error ? error.message : String(error) });
  }
}

/**
 * Puts the clocks that a record gives in place of those it gave before. One that counts to the same end keeps what was
 * called out already.
 *
 * @param kinds the kinds that are drawn anew; others of the batch stay
 */
export function drawnAnew(
  clocks: readonly Clock[],
  batchId: string,
  kinds: readonly ClockKind[],
  fresh: readonly Clock[],
): Clock[] {
  const isMine = (clock: Clock) => clock.batchId === batchId && kinds.includes(clock.kind);
  const before = new Map(clocks.filter(isMine).map((clock) => [clock.id, clock] as const));
  return [
    ...clocks.filter((clock) => !isMine(clock)),
    ...fresh.map((clock) => {
      const known = before.get(clock.id);
      return known?.endsMs === clock.endsMs ? { ...clock, told: known.told } : clock;
    }),
  ];
}

/** Follows what other tabs write. Returns the way to stop. */
export function followClocks(): () => void {
  lookAtClocks();
  const listen = ({ key }: StorageEvent) => {
    if (key === null || key === CLOCKS_KEY) lookAtClocks();
  };
  addEventListener('storage', listen);
  return () => removeEventListener('storage', listen);
}

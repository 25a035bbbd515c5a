/**
 * Which batch lies on the bench of this tab. Two tabs may work on two batches: each remembers its own for as long as it
 * is open. A new tab takes up the batch that was last worked on anywhere, which the database knows.
 */
const KEY = 'larderwright.bench';

/** Id of this tab's batch; '' after the bench was cleared; null when this tab has none of its own yet. */
export function benchId(): string | null {
  try {
    return sessionStorage.getItem(KEY);
  } catch {
    return null;
  }
}

export function setBenchId(id: string): void {
  try {
    sessionStorage.setItem(KEY, id);
  } catch {
    // Without it the tab takes up the batch last worked on.
  }
}

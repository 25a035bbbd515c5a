/** Where the running clocks lie in localStorage (see clock-store.ts). Nothing lies there while none runs. */
export const CLOCKS_KEY = 'larderwright.clocks';

/** Whether any clock runs on this device: all that a page asks before it fetches anything for them. */
export function hasClocks(): boolean {
  try {
    return localStorage.getItem(CLOCKS_KEY) !== null;
  } catch {
    return false;
  }
}

import {
  blankKitchen,
  type Kitchen,
  type ReadKitchen,
  readKitchen,
  withKitchen,
} from '@larderwright/calc/kitchen';
import { atom } from 'nanostores';
import { KITCHEN_KEY } from './kept-setting.ts';
import { markFromDevice } from './shown.ts';
import { $batch } from './store.ts';

/*
 * The settings of the kitchen, one JSON text in localStorage beside the batches: small, wanted before the first paint of
 * some pages, and not of any one batch. Every change reads what lies there, changes its one field and writes it back, in
 * one go: two tabs never undo each other. A text that cannot be read is set aside whole, not written over.
 */
const ASIDE_KEY = 'larderwright.kitchen.aside';
/** The look of the site has a place of its own: the script that runs before the first paint reads it there. */
const SCHEME_KEY = 'scheme';
/** Where the paper was kept before there were settings. */
const OLD_PAPER_KEY = 'larderwright.paper';

/** What is wrong with keeping the settings. */
export type KitchenTrouble =
  /** What is on screen could not be written; `detail` is the browser's reason. */
  | { readonly id: 'not-kept'; readonly detail: string }
  /** What lay there could not be read and was set aside. */
  | { readonly id: 'damaged'; readonly detail: string }
  /** Written by a newer version of the site: shown as blank and not written over. */
  | { readonly id: 'newer'; readonly detail: string };

export interface KitchenState {
  readonly kitchen: Kitchen;
  readonly trouble: KitchenTrouble | null;
}

export const $kitchen = atom<KitchenState>({ kitchen: blankKitchen(), trouble: null });

const reason = (error: unknown) => (error instanceof Error ? error.message : String(error));

function schemeKept(): Kitchen['scheme'] {
  const kept = localStorage.getItem(SCHEME_KEY);
  return kept === 'dark' || kept === 'light' ? kept : 'system';
}

/** Settings of a device that has none of its own yet, with what older versions of the site kept. */
function beforeSettings(): Kitchen {
  const paper = localStorage.getItem(OLD_PAPER_KEY) === 'letter' ? 'letter' : 'a4';
  return { ...blankKitchen(), paper };
}

function parsed(text: string): ReadKitchen {
  try {
    return readKitchen(JSON.parse(text));
  } catch {
    return { ok: false, problem: 'damaged', path: '' };
  }
}

/** The settings as they lie on the device. */
function kept(): KitchenState {
  try {
    const text = localStorage.getItem(KITCHEN_KEY);
    const scheme = schemeKept();
    if (text === null) return { kitchen: { ...beforeSettings(), scheme }, trouble: null };
    const read = parsed(text);
    if (read.ok) return { kitchen: { ...read.kitchen, scheme }, trouble: null };
    const blank = { ...beforeSettings(), scheme };
    if (read.problem === 'newer-version')
      return { kitchen: blank, trouble: { id: 'newer', detail: String(read.version) } };
    localStorage.setItem(ASIDE_KEY, text);
    localStorage.removeItem(KITCHEN_KEY);
    return { kitchen: blank, trouble: { id: 'damaged', detail: read.path } };
  } catch (error) {
    return { kitchen: blankKitchen(), trouble: { id: 'not-kept', detail: reason(error) } };
  }
}

/** Looks at what is kept. What could not be written before stays on screen. */
export function lookAtKitchen(): Kitchen {
  if ($kitchen.get().trouble?.id !== 'not-kept') $kitchen.set(kept());
  return $kitchen.get().kitchen;
}

/** Shows the scheme at once, as the button in the head of every page does. */
function showScheme(scheme: Kitchen['scheme']): void {
  if (typeof document === 'undefined') return;
  if (scheme === 'system') delete document.documentElement.dataset.scheme;
  else document.documentElement.dataset.scheme = scheme;
}

function write(kitchen: Kitchen): void {
  if (kitchen.scheme === 'system') localStorage.removeItem(SCHEME_KEY);
  else localStorage.setItem(SCHEME_KEY, kitchen.scheme);
  localStorage.setItem(KITCHEN_KEY, JSON.stringify(kitchen));
}

/** Changes the settings as they lie there now, and keeps them. */
export function changeKitchen(change: (kitchen: Kitchen) => Kitchen): void {
  const shown = $kitchen.get();
  // What an earlier write could not keep is on screen alone.
  const before = shown.trouble?.id === 'not-kept' ? { ...shown, trouble: null } : kept();
  const kitchen = change(before.kitchen);
  showScheme(kitchen.scheme);
  if (before.trouble?.id === 'newer') {
    $kitchen.set({ kitchen, trouble: before.trouble });
    return;
  }
  try {
    write(kitchen);
    $kitchen.set({ kitchen, trouble: before.trouble?.id === 'damaged' ? before.trouble : null });
  } catch (error) {
    $kitchen.set({ kitchen, trouble: { id: 'not-kept', detail: reason(error) } });
  }
}

/** The text that could not be read, whole; null when there is none. */
export function kitchenAside(): string | null {
  try {
    return localStorage.getItem(ASIDE_KEY);
  } catch {
    return null;
  }
}

/** Shows what is kept and follows other tabs. Returns the way to stop. */
export function followKitchen(): () => void {
  lookAtKitchen();
  const listen = ({ key }: StorageEvent) => {
    if (key === null || key === KITCHEN_KEY || key === SCHEME_KEY) lookAtKitchen();
  };
  addEventListener('storage', listen);
  return () => removeEventListener('storage', listen);
}

/** Gives a batch that was begun on this page what the kitchen has set once. It is no step to be undone. */
export function beginWithKitchen(batchId: string): void {
  const now = $batch.get();
  if (now.id !== batchId) return;
  const begun = withKitchen(now, lookAtKitchen());
  markFromDevice(begun);
  $batch.set(begun);
}

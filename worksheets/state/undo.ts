import { type Batch, mergeBatches } from '@larderwright/calc/batch';
import { atom } from 'nanostores';
import { nowIso } from './clock.ts';
import { isFromDevice } from './shown.ts';
import { $batch, emptyBatch } from './store.ts';

/*
 * Undo and redo of what was typed since the page was opened. A step is a pair of records, before and after; taking it
 * back changes the fields of that step and no others, so that what another tab or a later step did stays. What was said
 * and signed for the record (its states, its history, what was issued) is never undone: it is put right by saying more.
 */
interface Step {
  readonly before: Batch;
  readonly after: Batch;
  /** The one field it changed; null where it changed several. */
  readonly field: string | null;
  readonly atMs: number;
}

/** Typing in one field is one step while the pauses are shorter than this. */
const SAME_STEP_MS = 1_500;
const MOST_STEPS = 200;
const NEVER_UNDONE = ['lifecycle', 'history', 'issued', 'updatedAt', 'createdAt', 'id'] as const;

let done: Step[] = [];
let undone: Step[] = [];
let ownChange = false;

/** How many steps can be taken back and forth. */
export const $steps = atom<{ undo: number; redo: number }>({ undo: 0, redo: 0 });
const tell = () => $steps.set({ undo: done.length, redo: undone.length });

/** The field in which two records differ: null for several, '' for none. Shared parts are not looked into. */
function changedField(before: unknown, after: unknown, path = ''): string | null {
  if (before === after) return '';
  if (typeof before !== 'object' || typeof after !== 'object' || before === null || after === null)
    return path;
  if (Array.isArray(before) !== Array.isArray(after)) return path;
  const [old, now] = [before as Record<string, unknown>, after as Record<string, unknown>];
  if (Array.isArray(before) && before.length !== (after as unknown[]).length) return path;
  let found = '';
  for (const key of new Set([...Object.keys(old), ...Object.keys(now)])) {
    if (old[key] === now[key] || (path === '' && NEVER_UNDONE.some((name) => name === key))) continue;
    if (found !== '') return null;
    const below = changedField(old[key], now[key], `${path}.${key}`);
    if (below === null) return null;
    found = below;
  }
  return found;
}

function note(after: Batch, before: Batch): void {
  if (ownChange) return;
  if (before.id !== after.id) {
    if (before.id !== emptyBatch.id) {
      done = [];
      undone = [];
      tell();
    }
    return;
  }
  // What came from the device was typed by another hand.
  if (isFromDevice(after)) return;
  const field = changedField(before, after);
  if (field === '') return;
  const atMs = Date.now();
  const last = done.at(-1);
  if (
    last &&
    field !== null &&
    last.field === field &&
    atMs - last.atMs < SAME_STEP_MS &&
    undone.length === 0
  )
    done[done.length - 1] = { ...last, after, atMs };
  else done = [...done, { before, after, field, atMs }].slice(-MOST_STEPS);
  undone = [];
  tell();
}

/** Brings the fields of a step from one value to the other, wherever they still hold the first. */
function step(from: Batch, to: Batch): void {
  const now = $batch.get();
  const { batch } = mergeBatches(from, now, to);
  const kept = Object.fromEntries(NEVER_UNDONE.map((name) => [name, now[name]]));
  ownChange = true;
  $batch.set({ ...batch, ...kept, updatedAt: nowIso() });
  ownChange = false;
}

export function undo(): void {
  const last = done.pop();
  if (!last) return;
  undone.push(last);
  step(last.after, last.before);
  tell();
}

export function redo(): void {
  const last = undone.pop();
  if (!last) return;
  // A step that was taken back and done again is closed: typing on begins another.
  done.push({ ...last, atMs: 0 });
  step(last.before, last.after);
  tell();
}

/**
 * Text boxes whose last typing did not go into the record, such as a reading not yet added: the browser's own undo
 * serves them.
 */
const loose = new WeakSet<EventTarget>();
let beforeInput: Batch | null = null;

function onKey(event: KeyboardEvent): void {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
  const key = event.key.toLowerCase();
  const wantsUndo = key === 'z' && !event.shiftKey;
  const wantsRedo = (key === 'z' && event.shiftKey) || (key === 'y' && !event.shiftKey);
  if (!wantsUndo && !wantsRedo) return;
  if (event.target && loose.has(event.target)) return;
  event.preventDefault();
  if (wantsUndo) undo();
  else redo();
}

let watching = false;

/** Begins to remember the steps of this page, and listens for the keys. */
export function watchSteps(): void {
  if (watching) return;
  watching = true;
  $batch.listen((after, before) => note(after, before as Batch));
  addEventListener(
    'input',
    () => {
      beforeInput = $batch.get();
    },
    true,
  );
  addEventListener('input', ({ target }) => {
    if (!target) return;
    if ($batch.get() === beforeInput) loose.add(target);
    else loose.delete(target);
  });
  addEventListener('keydown', onKey);
}

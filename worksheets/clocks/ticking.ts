import { atom } from 'nanostores';
import { callWords } from '../words/clocks.ts';
import { $calls, callOut, lookAtCalls, openSoundAtTouch, stayAwake } from './calls.ts';
import { dueMark, type Present, passedMarks } from './clock.ts';
import { $clocks, changeClocks, followClocks } from './clock-store.ts';
import { hasClocks } from './kept-clocks.ts';
import { type Jump, look, presentOf, trusted, type Watch } from './present.ts';

const TICK_MS = 1_000;
/** How often the clock that was last seen is written down, for the look after a reload. */
const NOTE_MS = 10_000;
const SEEN_KEY = 'larderwright.clocks.seen';

/** The present as every clock on the page counts it, and a jump of the device's clock nobody has looked at. */
export const $present = atom<Present & { readonly jump: Jump | null }>({ earlyMs: 0, lateMs: 0, jump: null });
/** What was called out last, for a reader of the screen. */
export const $called = atom('');

let watch: Watch | null = null;
let notedMs = 0;

const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);

/** The clock as it was last seen, by this page before its reload or by another. */
function seen(): Watch | null {
  try {
    const raw: unknown = JSON.parse(localStorage.getItem(SEEN_KEY) ?? 'null');
    if (typeof raw !== 'object' || raw === null) return null;
    const { wallMs, aheadMs, jump } = raw as Partial<Record<keyof Watch, unknown>>;
    if (!isNumber(wallMs) || !isNumber(aheadMs) || aheadMs < 0) return null;
    const told = jump as Partial<Jump> | null;
    const isJump =
      isNumber(told?.byMs) && isNumber(told.atMs) && (told.kind === 'back' || told.kind === 'forward');
    return { wallMs, steadyMs: null, aheadMs, jump: isJump ? (told as Jump) : null };
  } catch {
    return null;
  }
}

function note(now: Watch): void {
  notedMs = now.wallMs;
  try {
    if (hasClocks()) localStorage.setItem(SEEN_KEY, JSON.stringify({ ...now, steadyMs: null }));
    else localStorage.removeItem(SEEN_KEY);
  } catch {
    // A jump across a reload is then not seen.
  }
}

function show(now: Watch): void {
  const jumped = now.aheadMs !== watch?.aheadMs || now.jump !== watch.jump;
  watch = now;
  if (jumped || Math.abs(now.wallMs - notedMs) > NOTE_MS) note(now);
  $present.set({ ...presentOf(now), jump: now.jump });
}

/** Calls out every clock that has come to a mark. */
function call(present: Present): void {
  for (const clock of $clocks.get().clocks) {
    if (dueMark(clock, present) === null) continue;
    const text = callWords(clock, present);
    const told = passedMarks(clock, present);
    // Written down before it is called: another tab that looks later finds it called.
    changeClocks((now) => now.map((each) => (each.id === clock.id ? { ...each, told } : each)));
    $called.set(text);
    callOut(text, clock.id);
  }
}

function tick(): void {
  show(look(watch, Date.now(), performance.now()));
  call($present.get());
  const { clocks } = $clocks.get();
  stayAwake($calls.get().awake && clocks.length > 0);
}

/** A person has looked at the clock of this device. */
export function trustClock(): void {
  if (watch) show(trusted(watch));
}

let users = 0;
let stop: () => void = () => {};

function start(): () => void {
  watch = seen();
  lookAtCalls();
  const stops = [followClocks(), openSoundAtTouch()];
  tick();
  const timer = setInterval(tick, TICK_MS);
  const stopSoon = $calls.listen(tick);
  document.addEventListener('visibilitychange', tick);
  return () => {
    clearInterval(timer);
    stopSoon();
    document.removeEventListener('visibilitychange', tick);
    stayAwake(false);
    for (const each of stops) each();
  };
}

/** Lets the clocks of the page tick as long as anything shows them. Returns the way to stop. */
export function keepTicking(): () => void {
  users += 1;
  if (users === 1) stop = start();
  return () => {
    users -= 1;
    if (users === 0) stop();
  };
}

import { atom } from 'nanostores';

/*
 * How a clock calls: what this device's person switched on, and whether the browser lets it. Nothing is asked of the browser
 * before a switch is turned.
 */

export interface Calls {
  readonly sound: boolean;
  readonly vibration: boolean;
  readonly notification: boolean;
  readonly awake: boolean;
}
export type CallKind = keyof Calls;

/** Why a way of calling is not to be had. */
export type CallBar = 'unknown-here' | 'refused';

const KEY = 'larderwright.clocks.calls';
const SILENT: Calls = { sound: false, vibration: false, notification: false, awake: false };

export const $calls = atom<Calls>(SILENT);
export const $bars = atom<Partial<Record<CallKind, CallBar>>>({});

const bar = (kind: CallKind, why: CallBar | undefined) => {
  const { [kind]: _, ...others } = $bars.get();
  $bars.set(why === undefined ? others : { ...others, [kind]: why });
};

/** What was switched on when this device was last used. */
export function lookAtCalls(): void {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? 'null');
    if (typeof kept !== 'object' || kept === null) return;
    const isOn = (kind: CallKind) => (kept as Record<string, unknown>)[kind] === true;
    $calls.set({
      sound: isOn('sound'),
      vibration: isOn('vibration'),
      notification:
        isOn('notification') && 'Notification' in globalThis && Notification.permission === 'granted',
      awake: isOn('awake'),
    });
  } catch {
    $calls.set(SILENT);
  }
}

function keep(calls: Calls): void {
  $calls.set(calls);
  try {
    localStorage.setItem(KEY, JSON.stringify(calls));
  } catch {
    // It holds as long as the page.
  }
}

let audio: AudioContext | null = null;

/** A browser makes sounds only once a person has touched the page: the first touch opens the way. */
function openSound(): void {
  if (!('AudioContext' in globalThis)) return;
  audio ??= new AudioContext();
  if (audio.state === 'suspended') void audio.resume().catch(() => {});
}

/** Opens the way for sound at the next touch or key, where sound is wanted. */
export function openSoundAtTouch(): () => void {
  const open = () => {
    if ($calls.get().sound) openSound();
  };
  addEventListener('pointerdown', open);
  addEventListener('keydown', open);
  return () => {
    removeEventListener('pointerdown', open);
    removeEventListener('keydown', open);
  };
}

/** Switches a way of calling on or off. Notifications are asked for here and nowhere else. */
export async function switchCall(kind: CallKind, on: boolean): Promise<void> {
  bar(kind, undefined);
  if (on && kind === 'sound') {
    if (!('AudioContext' in globalThis)) return bar(kind, 'unknown-here');
    openSound();
  }
  if (on && kind === 'vibration' && !('vibrate' in navigator)) return bar(kind, 'unknown-here');
  if (on && kind === 'awake' && !('wakeLock' in navigator)) return bar(kind, 'unknown-here');
  if (on && kind === 'notification') {
    if (!('Notification' in globalThis)) return bar(kind, 'unknown-here');
    const allowed = await Notification.requestPermission();
    if (allowed !== 'granted') return bar(kind, 'refused');
  }
  keep({ ...$calls.get(), [kind]: on });
}

/** Three rising tones, through the noise of a hood. */
function sound(): void {
  if (audio?.state !== 'running') return;
  const startS = audio.currentTime + 0.05;
  for (const [index, hertz] of [660, 880, 1_100].entries()) {
    const tone = audio.createOscillator();
    const gain = audio.createGain();
    const atS = startS + index * 0.35;
    tone.frequency.value = hertz;
    gain.gain.setValueAtTime(0.0001, atS);
    gain.gain.exponentialRampToValueAtTime(0.6, atS + 0.03);
    gain.gain.exponentialRampToValueAtTime(0.0001, atS + 0.3);
    tone.connect(gain).connect(audio.destination);
    tone.start(atS);
    tone.stop(atS + 0.32);
  }
}

async function notification(text: string, tag: string): Promise<void> {
  if (!('Notification' in globalThis) || Notification.permission !== 'granted') return;
  try {
    new Notification('Larderwright', { body: text, tag });
  } catch {
    // Phones show notifications through a service worker alone.
    const worker = await navigator.serviceWorker?.getRegistration();
    await worker?.showNotification('Larderwright', { body: text, tag });
  }
}

/** Calls out, in every way that is switched on. */
export function callOut(text: string, tag: string): void {
  const calls = $calls.get();
  if (calls.sound) sound();
  if (calls.vibration) navigator.vibrate?.([300, 150, 300]);
  if (calls.notification) void notification(text, tag).catch(() => {});
}

let lock: WakeLockSentinel | null = null;
let wanted = false;
let asking = false;
/** Whether the screen is held awake now. */
export const $awake = atom(false);

async function holdAwake(): Promise<void> {
  if (!wanted || lock || asking || document.visibilityState !== 'visible' || !('wakeLock' in navigator))
    return;
  asking = true;
  try {
    const held = await navigator.wakeLock.request('screen');
    if (!wanted || lock) {
      await held.release();
      return;
    }
    lock = held;
    bar('awake', undefined);
    $awake.set(true);
    // The browser lets go when the page is hidden: it is asked again when the page is back.
    held.addEventListener('release', () => {
      if (lock === held) lock = null;
      $awake.set(lock !== null);
    });
  } catch {
    bar('awake', 'refused');
  } finally {
    asking = false;
  }
}

let listens = false;

/** Keeps the screen awake, or lets it sleep again. */
export function stayAwake(awake: boolean): void {
  wanted = awake;
  if (!listens) {
    listens = true;
    document.addEventListener('visibilitychange', () => void holdAwake());
  }
  if (awake) void holdAwake();
  else {
    const held = lock;
    lock = null;
    $awake.set(false);
    void held?.release().catch(() => {});
  }
}

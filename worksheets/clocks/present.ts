import type { Present } from './clock.ts';

/*
 * What time it is, when the clock of a device may be set while others count on it. The wall clock is held against one that
 * nobody can set (performance.now) while the page is open, and against the last moment it was seen to show across a reload.
 * A clock that was set back makes the present uncertain by as much: limits then count from the later side, what must last
 * counts from the earlier, until a person has looked at the clock and says that it is right.
 */

/** Less than this is the clock keeping itself right. */
const SLIP_MS = 2_000;
/** Forward jumps are told from here on; a device that slept makes one too, and that is no fault. */
const FORWARD_MS = 60_000;
/** With more than this between two looks the page was asleep. */
const ASLEEP_MS = 10_000;

/** A jump of the device's clock. */
export interface Jump {
  readonly kind: 'back' | 'forward';
  readonly byMs: number;
  /** What the clock showed after it, ms. */
  readonly atMs: number;
}

export interface Watch {
  readonly wallMs: number;
  /** A reading of a clock nobody can set; null: none yet on this page. */
  readonly steadyMs: number | null;
  /** How much later than shown it may be. */
  readonly aheadMs: number;
  readonly jump: Jump | null;
}

/** Looks at the clock again. */
export function look(before: Watch | null, wallMs: number, steadyMs: number): Watch {
  if (before === null) return { wallMs, steadyMs, aheadMs: 0, jump: null };
  const passedMs = before.steadyMs === null ? 0 : steadyMs - before.steadyMs;
  const driftMs = wallMs - (before.wallMs + passedMs);
  if (driftMs < -SLIP_MS) {
    const jump: Jump = { kind: 'back', byMs: -driftMs, atMs: wallMs };
    return { wallMs, steadyMs, aheadMs: before.aheadMs - driftMs, jump };
  }
  // Set forward again: what it had lost is found.
  const aheadMs = driftMs > SLIP_MS ? Math.max(0, before.aheadMs - driftMs) : before.aheadMs;
  const awake = before.steadyMs !== null && passedMs < ASLEEP_MS;
  const jump: Jump | null =
    awake && driftMs > FORWARD_MS && before.aheadMs === 0
      ? { kind: 'forward', byMs: driftMs, atMs: wallMs }
      : before.aheadMs > 0 && aheadMs === 0
        ? null
        : before.jump;
  return { wallMs, steadyMs, aheadMs, jump };
}

/** A person has looked at the clock of this device: it is right as it is. */
export const trusted = (watch: Watch): Watch => ({ ...watch, aheadMs: 0, jump: null });

export const presentOf = ({ wallMs, aheadMs }: Watch): Present => ({
  earlyMs: wallMs,
  lateMs: wallMs + aheadMs,
});

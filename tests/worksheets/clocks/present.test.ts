import { describe, expect, it } from 'vitest';
import { look, presentOf, trusted, type Watch } from '../../../worksheets/clocks/present.ts';

const NOON = Date.parse('2026-11-27T12:00:00Z');
const HOUR = 3_600_000;
const S = 1_000;

/** A page open since noon by a right clock. */
const opened = look(null, NOON, 0);
const moved = (watch: Watch, wallMs: number, steadyMs: number) => look(watch, NOON + wallMs, steadyMs);

describe('the present', () => {
  it('is what the clock shows while nobody sets it', () => {
    const later = moved(opened, 90 * S, 90 * S);
    expect(presentOf(later)).toEqual({ earlyMs: NOON + 90 * S, lateMs: NOON + 90 * S });
    expect(later.jump).toBeNull();
  });

  it('is uncertain by as much as the clock was set back, and told', () => {
    const back = moved(opened, 10 * S - HOUR, 10 * S);
    expect(presentOf(back)).toEqual({ earlyMs: NOON + 10 * S - HOUR, lateMs: NOON + 10 * S });
    expect(back.jump).toMatchObject({ kind: 'back', byMs: HOUR });
    const later = moved(back, 20 * S - HOUR, 20 * S);
    expect(presentOf(later).lateMs).toBe(NOON + 20 * S);
    expect(later.jump).toEqual(back.jump);
  });

  it('is certain again when the clock is set right, or a person says that it is', () => {
    const back = moved(opened, 10 * S - HOUR, 10 * S);
    expect(moved(back, 20 * S, 20 * S)).toMatchObject({ aheadMs: 0, jump: null });
    expect(trusted(back)).toMatchObject({ aheadMs: 0, jump: null });
  });

  it('tells of a clock set forward while the page looked on, and counts from what it shows', () => {
    const forward = moved(opened, HOUR + S, S);
    expect(forward.jump).toMatchObject({ kind: 'forward', byMs: HOUR });
    expect(presentOf(forward).lateMs).toBe(NOON + HOUR + S);
  });

  it('takes a device that slept for no fault, whether its steady clock slept too or not', () => {
    expect(moved(opened, HOUR, HOUR).jump).toBeNull();
    const woken = moved(moved(opened, S, S), HOUR, HOUR - 1);
    expect(woken.jump).toBeNull();
    expect(presentOf(woken).lateMs).toBe(NOON + HOUR);
  });

  it('sees across a reload that the clock went back meanwhile', () => {
    const noted: Watch = { wallMs: NOON, steadyMs: null, aheadMs: 0, jump: null };
    const reloaded = look(noted, NOON - HOUR, 3);
    expect(presentOf(reloaded)).toEqual({ earlyMs: NOON - HOUR, lateMs: NOON });
    expect(look(noted, NOON + 8 * HOUR, 3).jump).toBeNull();
  });
});

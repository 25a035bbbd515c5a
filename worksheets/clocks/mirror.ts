import type { Batch } from '@larderwright/calc/batch';
import { $batch, $life } from '../state/store.ts';
import type { ClockKind } from './clock.ts';
import { changeClocks, drawnAnew } from './clock-store.ts';
import { isCooking, isCooling, stageClocks } from './of-batch.ts';

/*
 * Draws the clocks of the batch on the bench from its record, at every change: the stages at once, the limits of the cooling
 * and the hold of the cook as soon as they are judged. What judges them is fetched only while such a clock can run.
 */

function draw(batch: Batch, kinds: readonly ClockKind[], clocks: ReturnType<typeof stageClocks>): void {
  changeClocks((now) => drawnAnew(now, batch.id, kinds, clocks));
}

let limitsAsked = false;
let holdAsked = false;

function mirror(batch: Batch): void {
  if ($life.get() !== 'open') return;
  draw(batch, ['stage'], stageClocks(batch));
  if (!isCooling(batch)) draw(batch, ['limit'], []);
  else if (!limitsAsked) {
    limitsAsked = true;
    import('./mirror-limits.ts').then(
      ({ mirrorLimits }) => mirrorLimits(),
      () => {
        limitsAsked = false;
      },
    );
  }
  if (!isCooking(batch)) draw(batch, ['hold'], []);
  else if (!holdAsked) {
    holdAsked = true;
    import('./mirror-hold.ts').then(
      ({ mirrorHold }) => mirrorHold(),
      () => {
        holdAsked = false;
      },
    );
  }
}

let following = false;

/** Begins to follow the batch on the bench. Safe to call from every part of the page. */
export function mirrorBench(): void {
  if (following) return;
  following = true;
  $batch.subscribe(mirror);
  $life.listen(() => mirror($batch.get()));
}

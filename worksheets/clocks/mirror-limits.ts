import { coolDeadlines } from '@larderwright/calc/cooling';
import { $chill } from '../press-and-chill/computed.ts';
import { $batch } from '../state/store.ts';
import { changeClocks, drawnAnew } from './clock-store.ts';
import { isCooling, limitClocks } from './of-batch.ts';

/** Draws the clocks of the cooling rule from the cooling as it is judged. */
export function mirrorLimits(): void {
  $chill.subscribe((chill) => {
    const batch = $batch.get();
    if (chill.state !== 'ready' || !isCooling(batch)) return;
    const fresh = limitClocks(batch, coolDeadlines(chill.value.cool, batch.process));
    changeClocks((now) => drawnAnew(now, batch.id, ['limit'], fresh));
  });
}

import { $cook } from '../cook-log/computed.ts';
import { $batch } from '../state/store.ts';
import { HOLD_LABEL } from '../words/clocks.ts';
import { changeClocks, drawnAnew } from './clock-store.ts';
import { holdClocks, isCooking } from './of-batch.ts';

/** Draws the clock of the hold from the cook as it is judged. It begins at the last reading that counts. */
export function mirrorHold(): void {
  $cook.subscribe((cook) => {
    const batch = $batch.get();
    if (cook.state !== 'ready' || !isCooking(batch)) return;
    const { stand } = cook.value;
    const lastMs = Math.max(...stand.probes.flatMap((probe) => probe.lastMs ?? []));
    const fresh =
      stand.untilMs === null || !Number.isFinite(lastMs)
        ? []
        : holdClocks(batch, HOLD_LABEL, lastMs, stand.untilMs);
    changeClocks((now) => drawnAnew(now, batch.id, ['hold'], fresh));
  });
}

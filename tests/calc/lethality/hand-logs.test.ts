import { judgeHold } from '@larderwright/calc/lethality';
import { describe, expect, it } from 'vitest';
import { checkedHandLog, heatEndMs } from '../../fixtures/hand-log.ts';
import { COOK_LOGS, type HandCookLog } from '../../fixtures/probe-logs.ts';

function judge(hand: HandCookLog) {
  const log = checkedHandLog(hand);
  const { tempC, tempF, holdS } = hand.limit;
  const readings = log.readings
    .filter((reading) => reading.state !== 'excluded')
    .map(({ atMs, tempC: readC, unit, state }) => ({ atMs, tempC: readC, unit, counts: state === 'counts' }));
  return judgeHold(readings, {
    stated: { value: tempC, unit: 'C', ...(tempF === undefined ? {} : { published: tempF }) },
    holdS,
    errorC: log.errorC,
    offsetKnown: log.offsetC !== null,
    unitSuspect: log.unitSuspect,
    heatOver: heatEndMs(hand) !== null,
  });
}

// Common practice, no source: every verdict was written down before the code.
describe('judgeHold on logs made by hand', () => {
  it.each(COOK_LOGS.map((hand) => [hand.id, hand.about, hand] as const))('%s: %s', (_, __, hand) => {
    const judged = judge(hand);
    expect(`${judged.state} (${hand.because})`).toBe(`${hand.verdict} (${hand.because})`);
  });
});

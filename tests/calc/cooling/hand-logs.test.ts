import { type CoolLeg, judgeCooling } from '@larderwright/calc/cooling';
import { describe, expect, it } from 'vitest';
import { checkedHandLog, heatEndMs } from '../../fixtures/hand-log.ts';
import { COOL_LOGS, COOLING_LEGS, type HandCoolLog } from '../../fixtures/probe-logs.ts';

const legs = Object.entries(COOLING_LEGS).map(
  ([id, { fromC, toC, maxMin }]): CoolLeg => ({
    id,
    from: { value: fromC, unit: 'C' },
    to: { value: toC, unit: 'C' },
    maxMin,
    mark: 'confirmed',
  }),
);

function judge(hand: HandCoolLog) {
  const log = checkedHandLog(hand);
  const readings = log.readings.flatMap(({ atMs, tempC, state }) =>
    state === 'excluded' || tempC === null ? [] : [{ atMs, tempC, counts: state === 'counts' }],
  );
  const [first, second] = judgeCooling(readings, legs, {
    errorC: log.errorC,
    offsetKnown: log.offsetC !== null,
    unitSuspect: log.unitSuspect,
    heatEndMs: heatEndMs(hand),
  });
  return { first: first?.state, second: second?.state };
}

// Common practice, no source: every verdict was written down before the code.
describe('judgeCooling on logs made by hand', () => {
  it.each(COOL_LOGS.map((hand) => [hand.id, hand.about, hand] as const))('%s: %s', (_, __, hand) => {
    expect({ ...judge(hand), because: hand.because }).toEqual({ ...hand.verdicts, because: hand.because });
  });
});

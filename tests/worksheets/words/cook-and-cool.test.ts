import { COOL_RULE_SETS, type CoolFacts, coolStage, UNKNOWN_COOL_FACTS } from '@larderwright/calc/cooling';
import { COOK_RULE_SETS, type CookFacts, cookStage, UNKNOWN_FACTS } from '@larderwright/calc/lethality';
import { describe, expect, it } from 'vitest';
import { cookWords } from '../../../worksheets/words/cook.ts';
import { coolWords } from '../../../worksheets/words/cool.ts';
import { pastedLog } from '../../fixtures/hand-log.ts';
import { INVENTED, inventedProcess } from '../../fixtures/invented-processes.ts';
import { COOK_LOGS, COOL_LOGS } from '../../fixtures/probe-logs.ts';

const names = Object.keys(INVENTED) as (keyof typeof INVENTED)[];
const times = [undefined, '09:00', '11:30', '13:50', '15:20'];

const cookFacts: readonly CookFacts[] = [
  UNKNOWN_FACTS,
  { hasPoultry: false, poultryKind: null, fatFraction: 0.25, comminuted: true, hasPorkLiver: true },
  { hasPoultry: true, poultryKind: 'both', fatFraction: 0.1, comminuted: true, hasPorkLiver: false },
];

const coolFacts: readonly CoolFacts[] = [
  UNKNOWN_COOL_FACTS,
  {
    nitritePpm: 130,
    acceleratorPpm: 500,
    saltOnWaterFraction: 0.04,
    waterActivity: 0.97,
    liverFraction: 0.05,
  },
  {
    nitritePpm: 130,
    acceleratorPpm: 500,
    saltOnWaterFraction: 0.04,
    waterActivity: 0.97,
    liverFraction: 0.3,
  },
  { nitritePpm: 0, acceleratorPpm: 0, saltOnWaterFraction: 0.02, waterActivity: 0.98, liverFraction: 0 },
];

/** No hole where a figure should stand. */
function expectWhole(title: string, body: string, id: string) {
  expect(title.length, id).toBeGreaterThan(8);
  expect(`${title} ${body}`, id).not.toMatch(/undefined|NaN|null|\[object|Infinity/);
}

describe('words of the cook and the cooling', () => {
  it('leave no hole in any sentence about the invented batches and the hand-made logs', () => {
    const said = new Set<string>();
    const processes = [
      ...names.flatMap((name) =>
        times.map((until) => inventedProcess(name, until === undefined ? {} : { until })),
      ),
      ...[...COOK_LOGS, ...COOL_LOGS].map((hand) => ({
        ...inventedProcess('countryTerrine'),
        steps: [],
        logs: [pastedLog(hand)],
      })),
      { ...inventedProcess('countryTerrine'), logs: [] },
    ];
    for (const process of processes) {
      for (const set of COOK_RULE_SETS)
        for (const facts of cookFacts) {
          const given = { ...process, cookRuleSetId: set.id, cookLimitId: set.limits.at(-1)?.id ?? null };
          const { findings, verdicts } = cookStage({ process: given }, facts);
          for (const { id, params } of [
            ...findings,
            ...verdicts.map(({ reason, params }) => ({ id: reason, params })),
          ]) {
            said.add(id);
            const { title, body } = cookWords[id](params);
            expectWhole(title, body, id);
          }
        }
      for (const set of COOL_RULE_SETS)
        for (const facts of coolFacts) {
          const { findings, verdicts } = coolStage({ process: { ...process, coolRuleSetId: set.id } }, facts);
          for (const { id, params } of [
            ...findings,
            ...verdicts.map(({ reason, params }) => ({ id: reason, params })),
          ]) {
            said.add(id);
            const { title, body } = coolWords[id](params);
            expectWhole(title, body, id);
          }
        }
    }
    // what the logs at hand cannot bring about is left to the stages' own tests
    expect(said.size).toBeGreaterThan(45);
  });

  it('says of a missed leg and of a missed hold that the product is held', () => {
    const params = { from: '57 °C', to: '21 °C', maxMin: 120, limit: '70 °C', hold: '2 min', countedS: 0 };
    const leg = coolWords['cool.leg-missed'](params);
    const hold = cookWords['cook.hold-short'](params);
    expect(`${leg.title} ${leg.body}`).toMatch(/hold.*do not serve/i);
    expect(`${hold.title} ${hold.body}`).toMatch(/hold/i);
  });
});

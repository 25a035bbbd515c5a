import type { CoolComparison } from '@larderwright/calc/cooling';
import * as say from '#words/press-and-chill/across.ts';
import { durationWords } from '../parts/clock-text.ts';
import { Computed } from '../parts/computed.tsx';
import { useShared } from '../state/use-shared.ts';
import { COOL_RULE_SET_NAMES } from '../words/cool-rule-set-names.ts';
import { wordsOf } from '../words/index.ts';
import { $chill } from './computed.ts';

/** Never the words of a verdict: only the chosen rule set gives one. */
const WOULD = { pass: say.wouldPass, fail: say.wouldFail, 'cannot-tell': say.cannotTell } as const;

/** The same log by every rule set, side by side: for reading. Only the chosen one rules. */
export function AcrossRuleSets() {
  return (
    <Computed of={useShared($chill)}>
      {({ across, cool }) => (
        <table class="across">
          <caption>{say.everyRuleSetOwnClockOwn}</caption>
          <thead>
            <tr>
              <th scope="col">{say.ruleSet}</th>
              <th scope="col">{say.legsLongestTheReadingsAllow}</th>
              <th scope="col">{say.comesTo}</th>
            </tr>
          </thead>
          <tbody>
            {across.map((one) => (
              <Row key={one.ruleSetId} one={one} chosen={one.ruleSetId === cool.ruleSet?.id} />
            ))}
          </tbody>
        </table>
      )}
    </Computed>
  );
}

function Row({ one, chosen }: { one: CoolComparison; chosen: boolean }) {
  const name = COOL_RULE_SET_NAMES.find(({ value }) => value === one.ruleSetId)?.label ?? one.ruleSetId;
  return (
    <tr>
      <th scope="row">
        {name}
        {chosen ? <strong> {say.chosenRules}</strong> : null}
      </th>
      <td data-head="Legs">
        {one.legs.map((leg) => (
          <p key={leg.id} class="leg-probe">
            {wordsOf(leg.reason, leg.params).title}
            {leg.worstMin === null ? '' : say.longestTheReadingsAllow(durationWords(leg.worstMin, 'up'))}
          </p>
        ))}
      </td>
      <td data-head="Comes to">
        <strong>{WOULD[one.state]}</strong>
      </td>
    </tr>
  );
}

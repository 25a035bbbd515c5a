import { SOURCES } from '@larderwright/calc/sources';
import * as say from '#words/cook-log/limit-fields.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { Computed } from '../parts/computed.tsx';
import { at } from '../parts/finding-list.tsx';
import { editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { holdWords, refusalWords } from '../words/cook-limits.ts';
import { limitTemp } from '../words/limit-temp.ts';
import type { CookComputed } from './compute.ts';
import { $cook } from './computed.ts';
import { actionText } from './cook-chart.ts';

/** The limits of the chosen rule set: pick one. Those that may not judge this batch are listed with the reason. */
export function LimitFields() {
  return <Computed of={useShared($cook)}>{(cook) => <Limits cook={cook} />}</Computed>;
}

function Limits({ cook }: { cook: CookComputed }) {
  const chosen = useAt('process.cookLimitId');
  const { choices, values, findings, birds } = cook;
  if (values.ruleSet === null) {
    return <p class="say">{say.chooseRuleSetFirstThenLimits}</p>;
  }
  const chosenId = typeof chosen === 'string' ? chosen : '';
  const refusedChosen = choices.refused.flatMap(({ limits }) => limits).find(({ id }) => id === chosenId);
  const offered = [
    ...choices.fits.map(({ id, label }) => ({ value: id, label })),
    ...(refusedChosen ? [{ value: chosenId, label: say.notForThisBatch2(refusedChosen.label) }] : []),
  ];
  return (
    <>
      <div class="plan">
        <ChoiceField
          label={say.theOneLimitThePlanNames}
          value={chosenId}
          empty={offered.length > 0 ? say.notChosen : say.noneOfThisSetMayJudge}
          choices={offered}
          onChoose={(id) => editAt('process.cookLimitId', id === '' ? null : id)}
          hint={say.meetingAnotherPairSetNoteNot}
          findings={at(findings, 'process.cookLimitId')}
        />
      </div>
      <LimitCard cook={cook} />
      {choices.refused.map(({ reason, limits }) => (
        <details key={reason} class="limits-off">
          <summary>{say.limitsOfThisSetNotOffered2(limits.length)}</summary>
          <p>{refusalWords(reason, birds)}</p>
          <ul>
            {limits.map(({ id, label }) => (
              <li key={id}>{label}</li>
            ))}
          </ul>
        </details>
      ))}
    </>
  );
}

const MARK_WORDS = {
  confirmed: '',
  memory: say.fromMemoryCheckTheCurrentText,
  derived: say.workedOutFromTheSource,
  'common-practice': say.commonPracticeNoSource,
} as const;

/** The chosen limit and what the probe must show for it. */
function LimitCard({ cook }: { cook: CookComputed }) {
  const { limit, hold, logs } = cook.values;
  if (!limit) return null;
  const source = SOURCES[limit.source];
  const unknown = logs.length === 0 || logs.some(({ log }) => log.errorC === null);
  const actions = logs.flatMap(({ hold: judged }) => judged?.actionC ?? []);
  return (
    <div class="limit">
      <div class="answer">
        <p class="answer-label">{say.limitAtTheColdestPoint}</p>
        <p class="answer-value">{limitTemp(limit.stated, 'minimum').text}</p>
        <p>{hold ? holdWords(hold.printed) : say.noHoldCanBeNamedFor}</p>
      </div>
      <div class="answer">
        <p class="answer-label">{say.actionTemperatureWhatProbeMust}</p>
        {actions.length > 0 ? (
          <p class="answer-value">{actionText(Math.max(...actions))}</p>
        ) : (
          <p class="answer-value answer-missing">{say.cannotTellProbesErrorNot}</p>
        )}
        <p>
          {say.limitPlusProbesErrorRoundedUp2(
            actions.length > 0 && unknown ? say.anotherProbeHasNoErrorEntered : '',
          )}
        </p>
      </div>
      <p class="verdict-basis">
        {source.title}, {source.edition}
        {MARK_WORDS[limit.mark] ? <strong> · {MARK_WORDS[limit.mark]}</strong> : null}
      </p>
    </div>
  );
}

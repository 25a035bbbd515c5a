import { SOURCES } from '@larderwright/calc/sources';
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
    return <p class="say">Choose the rule set first; then its limits are offered here.</p>;
  }
  const chosenId = typeof chosen === 'string' ? chosen : '';
  const refusedChosen = choices.refused.flatMap(({ limits }) => limits).find(({ id }) => id === chosenId);
  const offered = [
    ...choices.fits.map(({ id, label }) => ({ value: id, label })),
    ...(refusedChosen ? [{ value: chosenId, label: `${refusedChosen.label} (not for this batch)` }] : []),
  ];
  return (
    <>
      <div class="plan">
        <ChoiceField
          label="The one limit the plan names"
          value={chosenId}
          empty={offered.length > 0 ? 'Not chosen' : 'None of this set may judge this batch'}
          choices={offered}
          onChoose={(id) => editAt('process.cookLimitId', id === '' ? null : id)}
          hint="Meeting another pair of the set is a note, not a pass."
          findings={at(findings, 'process.cookLimitId')}
        />
      </div>
      <LimitCard cook={cook} />
      {choices.refused.map(({ reason, limits }) => (
        <details key={reason} class="limits-off">
          <summary>
            {limits.length} {limits.length === 1 ? 'limit' : 'limits'} of this set not offered
          </summary>
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
  memory: 'from memory, check the current text',
  derived: 'worked out from the source',
  'common-practice': 'common practice, no source',
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
        <p class="answer-label">Limit at the coldest point</p>
        <p class="answer-value">{limitTemp(limit.stated, 'minimum').text}</p>
        <p>{hold ? holdWords(hold.printed) : 'no hold can be named for this batch'}</p>
      </div>
      <div class="answer">
        <p class="answer-label">Action temperature: what the probe must show</p>
        {actions.length > 0 ? (
          <p class="answer-value">{actionText(Math.max(...actions))}</p>
        ) : (
          <p class="answer-value answer-missing">Cannot tell: the probe’s error is not entered</p>
        )}
        <p>
          Limit plus the probe’s error, rounded up, with its offset taken off: a probe that shows too much
          must show that much more.
          {actions.length > 0 && unknown ? ' Another probe has no error entered.' : ''}
        </p>
      </div>
      <p class="verdict-basis">
        {source.title}, {source.edition}
        {MARK_WORDS[limit.mark] ? <strong> · {MARK_WORDS[limit.mark]}</strong> : null}
      </p>
    </div>
  );
}

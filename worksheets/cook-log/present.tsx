import { tempText } from '../charts/temp-text.ts';
import { Answer } from '../parts/answer.tsx';
import { clockAt } from '../parts/clock-text.ts';
import { Computed } from '../parts/computed.tsx';
import { useShared } from '../state/use-shared.ts';
import { afterCookWorkings } from '../words/after-cook.ts';
import { holdWords } from '../words/cook-limits.ts';
import { limitTemp } from '../words/limit-temp.ts';
import { holdText } from './after.tsx';
import { $cook } from './computed.ts';

/** What to do now: the hold that would complete the cook at the temperature there is. */
export function AtPresent() {
  return (
    <Computed of={useShared($cook)}>
      {({ present, names, chart }) =>
        present.length === 0 ? null : (
          <div class="answers">
            {present.map(({ logId, surelyC, row, remainingS, untilMs, isPlans }) => (
              <Answer
                key={logId}
                label={`If it stays at this temperature${present.length > 1 ? `, ${names.get(logId) ?? ''}` : ''}`}
                value={
                  row === null || remainingS === null || untilMs === null
                    ? null
                    : `${limitTemp(row.limit.stated, 'minimum').text}, ${holdWords(row.hold.printed)}: ${holdText(remainingS)}, until ${clockAt(Math.ceil(untilMs / 60_000) * 60_000, chart.offsetMin)}`
                }
                missing={`Nothing: the rule set lists no row at or below ${tempText(surelyC)} °C. Heat on.`}
                worked={<p>{afterCookWorkings.present}</p>}
              >
                <p>
                  Surely {tempText(surelyC)} °C now, the probe’s error taken off.{' '}
                  {row === null
                    ? ''
                    : isPlans
                      ? 'This is the limit the plan names.'
                      : 'Not the limit the plan names: meeting it is a note and no pass, unless the plan is changed.'}
                </p>
              </Answer>
            ))}
          </div>
        )
      }
    </Computed>
  );
}

import * as say from '#words/cook-log/present.ts';
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
                label={say.ifItStaysAtThisTemperature2(
                  present.length > 1 ? `, ${names.get(logId) ?? ''}` : '',
                )}
                value={
                  row === null || remainingS === null || untilMs === null
                    ? null
                    : say.until2(
                        limitTemp(row.limit.stated, 'minimum').text,
                        holdWords(row.hold.printed),
                        holdText(remainingS),
                        clockAt(Math.ceil(untilMs / 60_000) * 60_000, chart.offsetMin),
                      )
                }
                missing={say.nothingRuleSetListsNoRow2(tempText(surelyC))}
                worked={<p>{afterCookWorkings.present}</p>}
              >
                <p>
                  {say.surelyCNowProbesErrorTaken2(
                    tempText(surelyC),
                    row === null
                      ? ''
                      : isPlans
                        ? say.thisIsTheLimitThePlan
                        : say.notLimitPlanNamesMeetingNote,
                  )}
                </p>
              </Answer>
            ))}
          </div>
        )
      }
    </Computed>
  );
}

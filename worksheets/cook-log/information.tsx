import type { ComeUp, CookLogResult } from '@larderwright/calc/lethality';
import { COME_UP } from '@larderwright/calc/lethality';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/cook-log/information.ts';
import { tempText } from '../charts/temp-text.ts';
import { Answer } from '../parts/answer.tsx';
import { durationWords } from '../parts/clock-text.ts';
import { Computed } from '../parts/computed.tsx';
import { percentText } from '../parts/number-text.ts';
import { useShared } from '../state/use-shared.ts';
import { afterCookWorkings, COOK_LOSS_DOUBT_WORDS } from '../words/after-cook.ts';
import { Reductions, Values } from './after.tsx';
import type { CookComputed } from './compute.ts';
import { $cook } from './computed.ts';

/** Minutes at 70 °C, rounded toward less heat. */
const minutes = (value: number) => `${fixedText(value, value < 10 ? 2 : 0, 'down')} min`;

function comeUpText({ minutes: taken, state, startUnknown }: ComeUp): string | null {
  if (taken === null) return null;
  const time = `${startUnknown ? say.atLeast : ''}${durationWords(taken, 'up')}`;
  return state === 'over' ? say.over6H(time) : say.within6H(time);
}

/** What the log says beside the verdict. None of it turns a fail into a pass. */
export function Information() {
  return (
    <Computed of={useShared($cook)}>
      {({ values, names, reductions, pasteurisation, loss }) =>
        values.logs.length === 0 ? (
          <p class="say">{say.noProbeYet}</p>
        ) : (
          <>
            {values.logs.map((result) => (
              <div key={result.logId}>
                <LogInformation
                  result={result}
                  name={values.logs.length > 1 ? (names.get(result.logId) ?? null) : null}
                />
                {result.readings.length > 0 ? (
                  <>
                    <Reductions reductions={reductions.get(result.logId) ?? []} />
                    <Values values={pasteurisation.get(result.logId) ?? []} />
                  </>
                ) : null}
              </div>
            ))}
            <p class="say">{say.holdCountsReadingReachesComeUp}</p>
            <CookLossAnswer loss={loss} />
          </>
        )
      }
    </Computed>
  );
}

/** What the cook takes of the weight, where practice says something about such a mix. */
function CookLossAnswer({ loss }: { loss: CookComputed['loss'] }) {
  const { loss: range, doubt } = loss;
  return (
    <div class="answers">
      <Answer
        label={say.lossInTheCookEstimate}
        value={
          range === null
            ? null
            : say.to(percentText(range.lowFraction, 0), percentText(range.highFraction, 0))
        }
        missing={doubt === null ? say.cannotTell : say.cannotTell2(COOK_LOSS_DOUBT_WORDS[doubt])}
        worked={<p>{afterCookWorkings.loss}</p>}
      >
        <p>{say.weighFinishedSheetThenPrints}</p>
      </Answer>
    </div>
  );
}

function LogInformation({ result, name }: { result: CookLogResult; name: string | null }) {
  const { hold, comeUp, atHeatEnd, whole, readings } = result;
  const any = readings.length > 0;
  return (
    <>
      {name ? <h3>{name}</h3> : null}
      <div class="answers">
        <Answer
          label={say.countedOnReadings}
          value={hold && any ? durationWords(hold.countedS / 60, 'down') : null}
          missing={say.cannotTellNoLimitOrNo}
          worked={<p>{say.firstLastReadingLongest}</p>}
        />
        <Answer
          label={say.straightLinesBetweenReadings}
          value={hold && any ? durationWords(hold.interpolatedS / 60, 'down') : null}
          missing={say.cannotTellNoLimitOrNo}
          worked={<p>{say.longestStretchAboveAction}</p>}
        />
        <Answer
          label={say.highestReading}
          value={hold?.peakC == null ? null : `${tempText(hold.peakC)} °C`}
          missing={say.noReadingYet}
          worked={<p>{say.highestReadingsCountDerived}</p>}
        />
        <Answer
          label={say.worthMinutes70CWholeLog}
          value={any ? minutes(whole.exactMin) : null}
          missing={say.noReadingYet}
          worked={
            <>
              <p>
                {say.sum10T70C7(
                  minutes(atHeatEnd.exactMin),
                  minutes(whole.trapezoidMin),
                  minutes(whole.failSafeMin),
                )}
              </p>
              <p>{say.tref70CZ10C(minutes(whole.z10Min))}</p>
            </>
          }
        />
        <Answer
          label={say.comeUpTo544C(COME_UP.fromC)}
          value={comeUpText(comeUp)}
          missing={say.notShownByTheReadings}
          worked={<p>{say.lastReadingBelow10CFirst}</p>}
        />
      </div>
    </>
  );
}

import type { ComeUp, CookLogResult } from '@larderwright/calc/lethality';
import { COME_UP } from '@larderwright/calc/lethality';
import { fixedText } from '@larderwright/calc/quantities';
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
  const time = `${startUnknown ? 'at least ' : ''}${durationWords(taken, 'up')}`;
  return state === 'over' ? `${time}: over 6 h` : `${time} (within 6 h)`;
}

/** What the log says beside the verdict. None of it turns a fail into a pass. */
export function Information() {
  return (
    <Computed of={useShared($cook)}>
      {({ values, names, reductions, pasteurisation, loss }) =>
        values.logs.length === 0 ? (
          <p class="say">No probe yet.</p>
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
            <p class="say">
              A hold counts from the reading that reaches it: come-up is not in it. Carry-over counts while it
              is logged at or above the limit. The sums above count both, and judge nothing.
            </p>
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
        label="Loss in the cook, estimate"
        value={
          range === null
            ? null
            : `${percentText(range.lowFraction, 0)} to ${percentText(range.highFraction, 0)}`
        }
        missing={doubt === null ? 'Cannot tell' : `Cannot tell: ${COOK_LOSS_DOUBT_WORDS[doubt]}`}
        worked={<p>{afterCookWorkings.loss}</p>}
      >
        <p>Weigh it finished: the sheet then prints what it lost.</p>
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
          label="Counted on readings"
          value={hold && any ? durationWords(hold.countedS / 60, 'down') : null}
          missing="Cannot tell: no limit or no reading"
          worked={
            <p>
              First to last reading of the longest unbroken run at or above the action temperature, no two
              more than 15 min apart. A lower reading, a doubtful one or a blank ends the run. The verdict
              rests on this alone.
            </p>
          }
        />
        <Answer
          label="By straight lines between readings (information)"
          value={hold && any ? durationWords(hold.interpolatedS / 60, 'down') : null}
          missing="Cannot tell: no limit or no reading"
          worked={
            <p>
              Longest stretch at or above the action temperature if the core went straight from reading to
              reading, gaps over 60 min left out. It may be longer than what was shown.
            </p>
          }
        />
        <Answer
          label="Highest reading"
          value={hold?.peakC == null ? null : `${tempText(hold.peakC)} °C`}
          missing="No reading yet"
          worked={<p>The highest of the readings that count. Derived.</p>}
        />
        <Answer
          label="Worth in minutes at 70 °C, whole log (information)"
          value={any ? minutes(whole.exactMin) : null}
          missing="No reading yet"
          worked={
            <>
              <p>
                Sum of 10^((T − 70 °C) ÷ 7.5 °C) × time along straight lines, from 60 °C up: Tref 70 °C, z 7.5
                °C, D at 70 °C not used. To the end of heating: {minutes(atHeatEnd.exactMin)}. By trapezoids:{' '}
                {minutes(whole.trapezoidMin)}. With the lower of two readings: {minutes(whole.failSafeMin)}.
              </p>
              <p>
                With Tref 70 °C and z 10 °C, from all readings: {minutes(whole.z10Min)}. A sum of heat does
                not judge a limit that names one temperature and one time.
              </p>
            </>
          }
        />
        <Answer
          label={`Come-up, ${COME_UP.fromC} to 54.4 °C`}
          value={comeUpText(comeUp)}
          missing="Not shown by the readings"
          worked={
            <p>
              Last reading at or below 10 °C to the first at or above 54.4 °C (130 °F): the longest the
              readings allow. Over 6 h, Staphylococcus may have made a toxin that cooking leaves. FSIS cooking
              guideline, Appendix A.
            </p>
          }
        />
      </div>
    </>
  );
}

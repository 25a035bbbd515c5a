import {
  STILL_FREEZER_FILM_WM2K,
  type Tempering,
  type TemperRequest,
  temperInFreezer,
  temperRefusal,
} from '@larderwright/calc/chill-budget';
import { useState } from 'preact/hooks';
import * as say from '#words/chill-budget/temper.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed, CouldNot } from '../parts/computed.tsx';
import { useShared } from '../state/use-shared.ts';
import { chillBudgetWorkings, temperRefusalWords } from '../words/chill-budget.ts';
import { $chillBudget } from './computed.ts';
import { minutesText, tempText } from './temp-text.ts';
import { $tempering, requestOf } from './tempering.ts';

/** How long cubes of the lean lie in the freezer, reckoned when asked. */
export function Temper() {
  return (
    <Computed of={useShared($chillBudget)}>{(computed) => <Asked request={requestOf(computed)} />}</Computed>
  );
}

function Asked({ request }: { request: TemperRequest }) {
  const run = useShared($tempering);
  const [running, setRunning] = useState(false);
  const refusal = temperRefusal(request);
  const asked = JSON.stringify(request);
  const ask = async () => {
    setRunning(true);
    try {
      $tempering.set({ for: asked, outcome: await temperInFreezer(request) });
    } catch (error) {
      $tempering.set({ for: asked, failure: error instanceof Error ? error.message : String(error) });
    } finally {
      setRunning(false);
    }
  };
  // An answer to other measures is no answer.
  const here = run?.for === asked ? run : null;
  return (
    <>
      {refusal ? (
        <p class="say">
          {Number.isNaN(request.startC) ? say.typeTheTemperatureOfTheLean : ''}
          {temperRefusalWords[refusal]}
        </p>
      ) : (
        <p class="buttons">
          <button type="button" disabled={running} onClick={ask}>
            {say.reckonTheMinutesInTheFreezer}
          </button>
        </p>
      )}
      <div role="status">
        {running ? <p class="say">{say.reckoning}</p> : null}
        {here && 'failure' in here ? <CouldNot detail={here.failure} /> : null}
        {here && 'outcome' in here && here.outcome ? <TemperAnswers of={here.outcome} /> : null}
      </div>
    </>
  );
}

const TEMPERED = <p>{say.sameRunHeatEngineCarriedWhat(chillBudgetWorkings.temper)}</p>;

function TemperAnswers({ of }: { of: Tempering }) {
  const minutes = (min: number | null) => (min === null ? say.notWithinMin(of.longestMin) : minutesText(min));
  return (
    <div class="answers">
      <Answer
        label={say.firmAtTheEdgeFrom}
        value={minutes(of.firmMin)}
        worked={<p>{say.filmStillFreezerWMK(chillBudgetWorkings.temper, STILL_FREEZER_FILM_WM2K)}</p>}
      >
        {of.coreAtFirmC === null ? null : <p>{say.itsMiddleIsThenAt(tempText(of.coreAtFirmC))}</p>}
      </Answer>
      <Answer label={say.tooStiffOutBy} value={minutes(of.stiffMin)} worked={TEMPERED} />
      <Answer label={say.solid} value={minutes(of.solidMin)} worked={TEMPERED} />
    </div>
  );
}

import type { LiveForecast, PlanBand } from '@larderwright/calc/cook-plan';
import { useEffect, useState } from 'preact/hooks';
import * as say from '#words/cook-log/live-forecast.ts';
import { FittedChart } from '../charts/index.ts';
import { $cookPlan } from '../cook-plan/computed.ts';
import { degreesText, riseText } from '../cook-plan/text.ts';
import { Answer } from '../parts/answer.tsx';
import { clockAt } from '../parts/clock-text.ts';
import { CouldNot } from '../parts/computed.tsx';
import { offsetOfBatch } from '../readings/offset-of-batch.ts';
import { nowIso } from '../state/clock.ts';
import { figureText, keepOven } from '../state/oven-records.ts';
import { $batch } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { cookPlanWorkings } from '../words/cook-plan.ts';
import { $cook } from './computed.ts';
import { liveChart } from './live-chart.ts';
import { $live, followCook, type LiveInput, type NoForecast } from './live-run.ts';

const WHY: Readonly<Record<NoForecast, string>> = {
  'no-plan': say.makePlanWorksheetCookPlanThen,
  'plan-open': say.cookPlanStillLacksSomethingSee,
  'no-start': say.writeWhenWentIntoHeatSteps,
  'no-reading': say.firstReadingBeginsForecast,
};

/** What the core will do from here, learnt from the readings and told with its band. Information, never a verdict. */
export function Forecast() {
  useEffect(followCook, []);
  const { why, value, madeFrom, working, failed } = useShared($live);
  if (why !== null) return <p class="say">{WHY[why]}</p>;
  if (failed !== null) return <CouldNot detail={failed} />;
  return (
    <>
      <div aria-live="polite">
        {working ? (
          <p class="not-yet">
            {value === null ? say.forecastBeingComputed : say.staleNewerReadingBeingReckoned}
          </p>
        ) : value === null ? (
          <p class="not-yet">{say.cannotTellNoReadingFitsAny}</p>
        ) : null}
      </div>
      {value !== null && madeFrom !== null ? (
        <div data-stale={working ? 'yes' : undefined}>
          <Told forecast={value} input={madeFrom} />
        </div>
      ) : null}
    </>
  );
}

function Told({ forecast, input }: { forecast: LiveForecast; input: LiveInput }) {
  const cook = useShared($cook);
  const { outcome, bands, residualC, used } = forecast;
  const { prediction } = outcome;
  const offsetMin = offsetOfBatch($batch.get());
  const clock = (minutes: number) => clockAt(input.startMs + minutes * 60_000, offsetMin);
  const between = ({ low, high }: PlanBand) =>
    high === Number.POSITIVE_INFINITY
      ? say.notBeforePerhapsNever(clock(low))
      : say.to(clock(low), clock(high));
  const over = input.cook.heatEndMin !== null;
  return (
    <>
      <p class="say">{say.learntReadingsMeetsWithinC(used, input.logName, residualC.toFixed(1))}</p>
      <div class="answers">
        <Answer
          label={say.coreAt(degreesText(input.cook.problem.targetC))}
          value={prediction.targetMin === null ? null : clock(prediction.targetMin)}
          missing={over ? say.notReachedAsForecast : say.neverInThisHeatAsForecast}
          worked={<p>{cookPlanWorkings.curve}</p>}
        >
          <p>{say.band(between(bands.targetMin))}</p>
        </Answer>
        <Answer
          label={over ? say.cameOutOfTheHeat : say.theMomentToPull}
          value={clock(prediction.heatEndMin)}
          worked={<p>{say.coreTargetHoldLimitAsksOver}</p>}
        >
          {over ? null : <p>{say.bandOnlyCoreReadTarget(between(bands.heatEndMin))}</p>}
        </Answer>
        <Answer
          label={say.carryOverAsForecast}
          value={say.peak(riseText(prediction.carryOverC), degreesText(prediction.peak.tempC, 'down'))}
          worked={<p>{cookPlanWorkings.carryOver}</p>}
        >
          <p>
            {say.bandOfThePeakTo(degreesText(bands.peakC.low, 'down'), degreesText(bands.peakC.high, 'up'))}
          </p>
        </Answer>
      </div>
      <ToChill last={forecast.lastMoment} clock={clock} />
      <Unlikely forecast={forecast} input={input} clock={clock} />
      {cook.state === 'ready' ? (
        <FittedChart model={liveChart(cook.value.chart, input, forecast)} title={say.readingsAndForecast} />
      ) : null}
      {over ? <KeepOven forecast={forecast} /> : null}
    </>
  );
}

/** The last moment to move to the chill, told from the pessimistic edge. */
function ToChill({ last, clock }: { last: LiveForecast['lastMoment']; clock: (minutes: number) => string }) {
  if (last === null) return null;
  return (
    <div class="answers">
      <Answer
        label={say.intoTheChillByAtThe}
        value={
          last.byMin === null ? null : `${last.atLeast ? say.atLeast : ''}${clock(Math.floor(last.byMin))}`
        }
        missing={say.evenOnceWouldLateSlowEdge}
        worked={<p>{say.longestWaitOutHeatPlannedChill}</p>}
      >
        <p>{say.plannedChillMeetsEveryLeg}</p>
      </Answer>
    </div>
  );
}

/** Readings no such kitchen gives. They stay in the log and in its verdict. */
function Unlikely(props: { forecast: LiveForecast; input: LiveInput; clock: (minutes: number) => string }) {
  const { forecast, input, clock } = props;
  if (forecast.unlikely.length === 0) return null;
  return (
    <div class="finding" data-severity="caution">
      <p>
        <strong class="finding-word">{say.caution}</strong>{' '}
        {say.unlikelyProbeSlippedWrongUnit(
          forecast.unlikely
            .flatMap((place) => input.cook.readings[place] ?? [])
            .map(({ timeMin, tempC }) => say.cAt(tempC.toFixed(1), clock(timeMin)))
            .join(', '),
        )}
      </p>
    </div>
  );
}

/** Leaves what the cook taught as a record for the next plan. */
function KeepOven({ forecast }: { forecast: LiveForecast }) {
  const plan = useShared($cookPlan);
  const [name, setName] = useState('');
  const [said, setSaid] = useState('');
  if (plan.state !== 'ready') return null;
  const { oven } = plan.value.ground.reading;
  const { kitchen } = forecast;
  // Learnt on top of the record the plan was made with.
  const learnt = {
    filmFactor: kitchen.filmFactor * (oven?.filmFactor ?? 1),
    heatingFactor: kitchen.heatingFactor * (oven?.heatingFactor ?? 1),
    mediumShiftC: kitchen.mediumShiftC + (oven?.mediumShiftC ?? 0),
  };
  const keep = () => {
    const known = name.trim();
    if (known === '') {
      setSaid(say.giveNameFirstOvenPan);
      return;
    }
    setSaid(
      keepOven({ name: known.slice(0, 80), at: nowIso(), ...learnt })
        ? say.keptAsTheNextCookPlan(known)
        : say.deviceKeepsNothingWriteFigures,
    );
  };
  return (
    <div class="keep-oven">
      <p class="say">
        {say.ovenAgainstShippedFiguresGives(
          figureText(learnt.filmFactor),
          figureText(learnt.heatingFactor),
          figureText(learnt.mediumShiftC),
        )}
      </p>
      <div class="add-row">
        <label class="field">
          <span class="field-label">{say.nameOfTheOvenRecord}</span>
          <input
            class="field-input"
            type="text"
            value={name}
            maxLength={80}
            onInput={(event) => setName(event.currentTarget.value)}
          />
        </label>
        <button type="button" onClick={keep}>
          {say.keepItForTheNextPlan}
        </button>
      </div>
      <p class="say" role="status">
        {said}
      </p>
    </div>
  );
}

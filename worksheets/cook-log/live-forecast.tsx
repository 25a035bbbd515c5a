import type { LiveForecast, PlanBand } from '@larderwright/calc/cook-plan';
import { useEffect, useState } from 'preact/hooks';
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
  'no-plan': 'Make a plan on the worksheet Cook plan: then every reading here forecasts the finish.',
  'plan-open': 'The cook plan still lacks something: see the worksheet Cook plan.',
  'no-start': 'Write when it went into the heat, in the steps above.',
  'no-reading': 'The first reading begins the forecast.',
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
            {value === null ? 'Forecast: being computed' : 'STALE: a newer reading is being reckoned with.'}
          </p>
        ) : value === null ? (
          <p class="not-yet">Cannot tell: no reading fits any plan of this kind.</p>
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
      ? `not before ${clock(low)}; perhaps never`
      : `${clock(low)} to ${clock(high)}`;
  const over = input.cook.heatEndMin !== null;
  return (
    <>
      <p class="say">
        Learnt from {used} {used === 1 ? 'reading' : 'readings'} of {input.logName}, which it meets within{' '}
        {residualC.toFixed(1)} °C. A forecast is no reading: the probe rules.
      </p>
      <div class="answers">
        <Answer
          label={`Core at ${degreesText(input.cook.problem.targetC)}`}
          value={prediction.targetMin === null ? null : clock(prediction.targetMin)}
          missing={over ? 'Not reached, as forecast' : 'Never in this heat, as forecast'}
          worked={<p>{cookPlanWorkings.curve}</p>}
        >
          <p>Band: {between(bands.targetMin)}</p>
        </Answer>
        <Answer
          label={over ? 'Came out of the heat' : 'The moment to pull'}
          value={clock(prediction.heatEndMin)}
          worked={<p>The core is at its target, and the hold that the limit asks for is over. Derived.</p>}
        >
          {over ? null : <p>Band: {between(bands.heatEndMin)}. Only with the core read at its target.</p>}
        </Answer>
        <Answer
          label="Carry-over, as forecast"
          value={`${riseText(prediction.carryOverC)}, peak ${degreesText(prediction.peak.tempC, 'down')}`}
          worked={<p>{cookPlanWorkings.carryOver}</p>}
        >
          <p>
            Band of the peak: {degreesText(bands.peakC.low, 'down')} to {degreesText(bands.peakC.high, 'up')}
          </p>
        </Answer>
      </div>
      <ToChill last={forecast.lastMoment} clock={clock} />
      <Unlikely forecast={forecast} input={input} clock={clock} />
      {cook.state === 'ready' ? (
        <FittedChart model={liveChart(cook.value.chart, input, forecast)} title="Readings and forecast" />
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
        label="Into the chill by, at the latest"
        value={
          last.byMin === null ? null : `${last.atLeast ? 'at least ' : ''}${clock(Math.floor(last.byMin))}`
        }
        missing="Even at once it would be late by the slow edge: chill harder, or in less depth"
        worked={
          <p>
            Longest wait out of the heat from which the planned chill still meets every leg, sought by the
            heat engine. Derived.
          </p>
        }
      >
        <p>
          So that the planned chill meets every leg of the cooling rule, its films at the slow edge and every
          time a fifth longer. The readings of the chill rule.
        </p>
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
        <strong class="finding-word">CAUTION</strong> Unlikely:{' '}
        {forecast.unlikely
          .flatMap((place) => input.cook.readings[place] ?? [])
          .map(({ timeMin, tempC }) => `${tempC.toFixed(1)} °C at ${clock(timeMin)}`)
          .join(', ')}
        . Probe slipped, wrong unit, or out of the meat? Kept in the log and in the verdict; only the forecast
        leaves it out. To take a reading out of the verdict, exclude it with reason and initials.
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
      setSaid('Give it a name first: which oven, which pan.');
      return;
    }
    setSaid(
      keepOven({ name: known.slice(0, 80), at: nowIso(), ...learnt })
        ? `Kept as ${known}. The next cook plan offers it.`
        : 'This device keeps nothing: write the figures down.',
    );
  };
  return (
    <div class="keep-oven">
      <p class="say">
        This oven against the shipped figures: gives its heat × {figureText(learnt.filmFactor)}, heats the pan
        × {figureText(learnt.heatingFactor)}, hotter than it shows by {figureText(learnt.mediumShiftC)} °C.
      </p>
      <div class="add-row">
        <label class="field">
          <span class="field-label">Name of the oven record</span>
          <input
            class="field-input"
            type="text"
            value={name}
            maxLength={80}
            onInput={(event) => setName(event.currentTarget.value)}
          />
        </label>
        <button type="button" onClick={keep}>
          Keep it for the next plan
        </button>
      </div>
      <p class="say" role="status">
        {said}
      </p>
    </div>
  );
}

import type { PlanOutcome } from '@larderwright/calc/cook-plan';
import { coldestSpot, PLAN_SPREADS } from '@larderwright/calc/cook-plan';
import { fixedText } from '@larderwright/calc/quantities';
import { useEffect } from 'preact/hooks';
import { FittedChart } from '../charts/index.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed, CouldNot } from '../parts/computed.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { FindingList } from '../parts/finding-list.tsx';
import { Needed } from '../parts/needed.tsx';
import { NotYet } from '../parts/not-yet.tsx';
import { useShared } from '../state/use-shared.ts';
import { cookPlanFigureNames, cookPlanWorkings, mixWords } from '../words/cook-plan.ts';
import { PREDICTED_NAMES } from '../words/cook-plan-names.ts';
import { limitTemp } from '../words/limit-temp.ts';
import type { CookPlanComputed, JudgedPlan } from './compute.ts';
import { $cookPlan } from './computed.ts';
import { CountedWith } from './counted-with.tsx';
import { planFieldName } from './names.ts';
import { planChart } from './plan-chart.ts';
import { $bands, $outcome, $pull, DRAWS, drawAgain, followPlan, stopBands } from './run.ts';
import { bandWords, degreesText, legBandWords, riseText, timeWords } from './text.ts';

/** What the plan comes to: stops first, then times, the curve, the cooling rule and the band. */
export function Prediction() {
  useEffect(followPlan, []);
  return <Computed of={useShared($cookPlan)}>{(plan) => <Predicted plan={plan} />}</Computed>;
}

function Predicted({ plan }: { plan: CookPlanComputed }) {
  const { value, stale, working, failed } = useShared($outcome);
  const judged = plan.judge(stale ? null : value);
  return (
    <>
      <FindingList findings={judged.findings.filter(({ severity }) => severity === 'stop')} />
      <Needed missing={judged.missing} figures={cookPlanFigureNames} nameOf={planFieldName} />
      <div aria-live="polite">
        {failed !== null ? (
          <CouldNot detail={failed} />
        ) : value === null ? (
          <NotYet what={working ? 'The curve: being computed' : 'The curve: not yet computed'} />
        ) : stale ? (
          <p class="not-yet" data-stale="yes">
            STALE: what stands below is of the plan as it was.
            {working ? ' The new curve is being computed.' : ' Something is missing for the new one.'}
          </p>
        ) : null}
      </div>
      {value === null ? null : (
        <div class="predicted" data-stale={stale ? 'yes' : undefined}>
          <Figures plan={plan} outcome={value} judged={judged} />
        </div>
      )}
    </>
  );
}

interface FiguresProps {
  plan: CookPlanComputed;
  outcome: PlanOutcome;
  judged: JudgedPlan;
}

function Figures({ plan, outcome }: FiguresProps) {
  const { prediction } = outcome;
  const bands = useShared($bands);
  const pull = useShared($pull);
  const { targetMin, heatEndMin, peak } = prediction;
  const { holdMin, targetC } = plan.ground;
  const band = bands.value;
  return (
    <>
      <div class="answers">
        <Answer
          label={`Core reaches ${targetC === null ? 'its target' : degreesText(targetC)} after`}
          value={targetMin === null ? null : timeWords(targetMin)}
          missing="Never, in 12 h of this heat"
          worked={<p>{cookPlanWorkings.curve}</p>}
        >
          {band ? <p>Band: {bandWords(band.targetMin)}</p> : <BandProgress />}
        </Answer>
        <Answer
          label="The moment to pull: out of the heat after"
          value={targetMin === null ? null : timeWords(heatEndMin)}
          worked={<p>The core is at its target, and the hold that the limit asks for is over. Derived.</p>}
        >
          <p>
            {holdMin ? `Its hold of ${timeWords(holdMin)} is done then. ` : ''}
            {pull.value && !pull.stale
              ? `Out at ${degreesText(pull.value.tempC, 'up')}, after ${timeWords(pull.value.timeMin)}, carry-over alone is predicted to bring it to the target. No reason to pull early: only a probe left in shows it.`
              : ''}
          </p>
        </Answer>
        <Answer
          label="Carry-over"
          value={`${riseText(prediction.carryOverC)}, peak ${degreesText(peak.tempC, 'down')}`}
          worked={<p>{cookPlanWorkings.carryOver}</p>}
        >
          <p>Peak after {timeWords(peak.timeMin)}.</p>
        </Answer>
        <Answer
          label="The last spot is down to the end of the chill after"
          value={`${timeWords(prediction.endMin)}, ${degreesText(prediction.endC, 'up')}`}
          worked={<p>{cookPlanWorkings.cooling}</p>}
        />
        <Coldest plan={plan} outcome={outcome} />
        <Answer
          label="Lethality, for information"
          value={`${fixedText(prediction.value.z10.wholeMin, 0, 'down')} min at 70 °C (158 °F), z 10 °C (18 °F)`}
          worked={<p>{cookPlanWorkings.value}</p>}
        >
          <p>
            {fixedText(prediction.value.z10.heatMin, 0, 'down')} min of it in the heat. By z 7.5 °C (13.5 °F):{' '}
            {fixedText(prediction.value.z7_5.wholeMin, 0, 'down')} min.
          </p>
        </Answer>
        <Answer
          label="The hold of the limit"
          value={prediction.hold ? PREDICTED_NAMES[prediction.hold.state] : null}
          missing="Cannot tell: no limit is chosen"
          worked={
            <p>Time the coldest spot stays at or above the limit’s temperature, by the curve. Derived.</p>
          }
        >
          {prediction.hold ? <p>At or above it for {timeWords(prediction.hold.heldMin)}.</p> : null}
        </Answer>
      </div>
      <FittedChart model={planChart(plan.ground, outcome, band)} title="The plan, predicted" />
      <CountedWith plan={plan} />
      <Cooling plan={plan} outcome={outcome} />
      <Bands />
    </>
  );
}

/** Where the probe belongs: the engine seeks the coldest spot, the middle is not assumed. */
function Coldest({ plan, outcome }: { plan: CookPlanComputed; outcome: PlanOutcome }) {
  const spot = coldestSpot(outcome, outcome.prediction.heatEndMin);
  const { body } = plan.ground;
  if (spot === null || body === null) return null;
  return (
    <Answer
      label={mixWords.coldest}
      value={`${spotText(spot.heightMm)} over the base of the mix`}
      worked={<p>{mixWords.coldestWorking}</p>}
    >
      <p>{spotText(Math.max(0, body.mixDepthMm - spot.heightMm))} under its top.</p>
    </Answer>
  );
}

const spotText = (mm: number) => `${fixedText(mm, 0)} mm (${fixedText(mm / 25.4, 1)} in)`;

function Cooling({ plan, outcome }: { plan: CookPlanComputed; outcome: PlanOutcome }) {
  const { cooling } = outcome.prediction;
  const bands = useShared($bands).value;
  const { coolSet } = plan.ground;
  if (coolSet === null || cooling === null)
    return <p class="say">Whether it cools in time: cannot tell, no cooling rule is chosen.</p>;
  return (
    <FigureTable
      caption={`Cooling by ${coolSet.title}, predicted, not proof`}
      columns={['Leg', 'At most', 'Takes', 'Band', 'So']}
      words
      rows={coolSet.legs.map((leg) => {
        const own = cooling.legs.find(({ legId }) => legId === leg.id);
        const band = bands?.legs.find(({ legId }) => legId === leg.id)?.elapsedMin;
        return {
          key: leg.id,
          head: `${leg.from === null ? 'end of cooking' : limitTemp(leg.from, 'maximum').text} to ${limitTemp(leg.to, 'maximum').text}`,
          cells: [
            timeWords(leg.maxMin),
            own?.elapsedMin == null ? 'cannot tell' : timeWords(own.elapsedMin),
            band ? legBandWords(band) : 'not yet computed',
            <strong key="so">{PREDICTED_NAMES[own?.state ?? 'cannot-tell']}</strong>,
          ],
        };
      })}
    />
  );
}

function BandProgress() {
  const { working, done } = useShared($bands);
  return <p>{working ? `Band: being drawn, ${Math.round(done * 100)} %` : 'Band: not yet computed'}</p>;
}

const SPREAD_ROWS = [
  [
    'Films of air and water',
    `× or ÷ ${Math.exp(PLAN_SPREADS.filmFactor).toFixed(2)}`,
    'usual ranges, from memory',
  ],
  [
    'Oven, bath and cold, against what they show',
    `± ${PLAN_SPREADS.mediumC} °C (5.4 °F)`,
    'common practice, no source',
  ],
  [
    'How strongly the oven heats the pan',
    `× or ÷ ${Math.exp(PLAN_SPREADS.heatingFactor).toFixed(2)}`,
    'common practice, no source',
  ],
  [
    'Conductivity of the mix',
    `± ${(100 * PLAN_SPREADS.conductivity).toFixed(0)} %`,
    'scatter of published data',
  ],
  ['Core when it goes in', `± ${PLAN_SPREADS.startC} °C (1.8 °F)`, 'common practice, no source'],
  ['Height of the fill', `± ${PLAN_SPREADS.depthMm} mm`, 'common practice, no source'],
  ['Moisture of the oven over an open bath', '5 to 30 kPa', 'worked out'],
] as const;

function Bands() {
  const { value, working, done, failed, stale } = useShared($bands);
  return (
    <section class="bands" aria-label="How sure it is">
      {working ? (
        <p class="buttons">
          <progress value={done} max={1} aria-label="Drawing the band" />
          <button type="button" onClick={stopBands}>
            Stop drawing the band
          </button>
        </p>
      ) : failed !== null ? (
        <p class="buttons">
          Band not drawn ({failed}).{' '}
          <button type="button" onClick={drawAgain}>
            Draw the band
          </button>
        </p>
      ) : null}
      {value && !stale ? (
        <p class="say">
          Of {DRAWS} kitchens drawn, {Math.round(value.missesCook * DRAWS)} miss the cook and{' '}
          {Math.round(value.missesCooling * DRAWS)} miss the cooling rule.
        </p>
      ) : null}
      <details class="worked">
        <summary>What the band is drawn from</summary>
        <div class="worked-body">
          <p>{cookPlanWorkings.band}</p>
          <FigureTable
            columns={['What is not known', 'One spread', 'From']}
            words
            rows={SPREAD_ROWS.map(([name, ...cells]) => ({ key: name, head: name, cells }))}
          />
        </div>
      </details>
    </section>
  );
}

import type { PlanOutcome } from '@larderwright/calc/cook-plan';
import { coldestSpot, PLAN_SPREADS } from '@larderwright/calc/cook-plan';
import { fixedText } from '@larderwright/calc/quantities';
import { useEffect } from 'preact/hooks';
import * as say from '#words/cook-plan/prediction.ts';
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
import { KeepTold } from './keep-told.tsx';
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
          <NotYet what={working ? say.theCurveBeingComputed : say.theCurveNotYetComputed} />
        ) : stale ? (
          <p class="not-yet" data-stale="yes">
            {say.staleWhatStandsBelowPlan2(
              working ? say.theNewCurveIsBeingComputed : say.somethingIsMissingForTheNew,
            )}
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
          label={say.coreReachesAfter2(targetC === null ? say.itsTarget : degreesText(targetC))}
          value={targetMin === null ? null : timeWords(targetMin)}
          missing={say.neverIn12HOfThis}
          worked={<p>{cookPlanWorkings.curve}</p>}
        >
          {band ? <p>{say.band3(bandWords(band.targetMin))}</p> : <BandProgress />}
        </Answer>
        <Answer
          label={say.momentPullOutHeatAfter}
          value={targetMin === null ? null : timeWords(heatEndMin)}
          worked={<p>{say.coreTargetHoldLimitAsksOver}</p>}
        >
          <p>
            {holdMin ? say.itsHoldOfIsDoneThen2(timeWords(holdMin)) : ''}
            {pull.value && !pull.stale
              ? say.outAfterCarryOverAlone2(
                  degreesText(pull.value.tempC, 'up'),
                  timeWords(pull.value.timeMin),
                )
              : ''}
          </p>
        </Answer>
        <Answer
          label={say.carryOver}
          value={say.peak2(riseText(prediction.carryOverC), degreesText(peak.tempC, 'down'))}
          worked={<p>{cookPlanWorkings.carryOver}</p>}
        >
          <p>{say.peakAfter2(timeWords(peak.timeMin))}</p>
        </Answer>
        <Answer
          label={say.lastSpotDownEndChillAfter}
          value={`${timeWords(prediction.endMin)}, ${degreesText(prediction.endC, 'up')}`}
          worked={<p>{cookPlanWorkings.cooling}</p>}
        />
        <Coldest plan={plan} outcome={outcome} />
        <Answer
          label={say.lethalityForInformation}
          value={say.minAt70C158F2(fixedText(prediction.value.z10.wholeMin, 0, 'down'))}
          worked={<p>{cookPlanWorkings.value}</p>}
        >
          <p>
            {say.minOfItInTheHeat2(
              fixedText(prediction.value.z10.heatMin, 0, 'down'),
              fixedText(prediction.value.z7_5.wholeMin, 0, 'down'),
            )}
          </p>
        </Answer>
        <Answer
          label={say.theHoldOfTheLimit}
          value={prediction.hold ? PREDICTED_NAMES[prediction.hold.state] : null}
          missing={say.cannotTellNoLimitIsChosen}
          worked={<p>{say.timeColdestSpotStaysAbove}</p>}
        >
          {prediction.hold ? <p>{say.atOrAboveItFor2(timeWords(prediction.hold.heldMin))}</p> : null}
        </Answer>
      </div>
      <FittedChart model={planChart(plan.ground, outcome, band)} title={say.thePlanPredicted} />
      <CountedWith plan={plan} />
      <Cooling plan={plan} outcome={outcome} />
      <Bands />
      <KeepTold plan={plan} />
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
      value={say.overTheBaseOfTheMix2(spotText(spot.heightMm))}
      worked={<p>{mixWords.coldestWorking}</p>}
    >
      <p>{say.underItsTop2(spotText(Math.max(0, body.mixDepthMm - spot.heightMm)))}</p>
    </Answer>
  );
}

const spotText = (mm: number) => say.mmIn2(fixedText(mm, 0), fixedText(mm / 25.4, 1));

function Cooling({ plan, outcome }: { plan: CookPlanComputed; outcome: PlanOutcome }) {
  const { cooling } = outcome.prediction;
  const bands = useShared($bands).value;
  const { coolSet } = plan.ground;
  if (coolSet === null || cooling === null) return <p class="say">{say.whetherCoolsTimeCannotTellNo}</p>;
  return (
    <FigureTable
      caption={say.coolingByPredictedNotProof2(coolSet.title)}
      columns={[say.leg, say.atMost, say.takes, say.band2, say.so]}
      words
      rows={coolSet.legs.map((leg) => {
        const own = cooling.legs.find(({ legId }) => legId === leg.id);
        const band = bands?.legs.find(({ legId }) => legId === leg.id)?.elapsedMin;
        return {
          key: leg.id,
          head: say.to2(
            leg.from === null ? say.endOfCooking : limitTemp(leg.from, 'maximum').text,
            limitTemp(leg.to, 'maximum').text,
          ),
          cells: [
            timeWords(leg.maxMin),
            own?.elapsedMin == null ? say.cannotTell : timeWords(own.elapsedMin),
            band ? legBandWords(band) : say.notYetComputed,
            <strong key="so">{PREDICTED_NAMES[own?.state ?? 'cannot-tell']}</strong>,
          ],
        };
      })}
    />
  );
}

function BandProgress() {
  const { working, done } = useShared($bands);
  return <p>{working ? say.bandBeingDrawn2(Math.round(done * 100)) : say.bandNotYetComputed}</p>;
}

const SPREAD_ROWS = [
  [say.filmsOfAirAndWater, say.or3(Math.exp(PLAN_SPREADS.filmFactor).toFixed(2)), say.usualRangesFromMemory],
  [say.ovenBathColdAgainstWhatShow, `± ${PLAN_SPREADS.mediumC} °C (5.4 °F)`, say.commonPracticeNoSource],
  [
    say.howStronglyTheOvenHeatsThe,
    say.or4(Math.exp(PLAN_SPREADS.heatingFactor).toFixed(2)),
    say.commonPracticeNoSource,
  ],
  [
    say.conductivityOfTheMix,
    `± ${(100 * PLAN_SPREADS.conductivity).toFixed(0)} %`,
    say.scatterOfPublishedData,
  ],
  [say.coreWhenItGoesIn, `± ${PLAN_SPREADS.startC} °C (1.8 °F)`, say.commonPracticeNoSource],
  [say.heightOfTheFill, `± ${PLAN_SPREADS.depthMm} mm`, say.commonPracticeNoSource],
  [say.moistureOvenOverOpenBath, say.n5To30Kpa, say.workedOut],
] as const;

function Bands() {
  const { value, working, done, failed, stale } = useShared($bands);
  return (
    <section class="bands" aria-label={say.howSureItIs}>
      {working ? (
        <p class="buttons">
          <progress value={done} max={1} aria-label={say.drawingTheBand} />
          <button type="button" onClick={stopBands}>
            {say.stopDrawingTheBand}
          </button>
        </p>
      ) : failed !== null ? (
        <p class="buttons">
          {say.bandNotDrawn2(failed)}{' '}
          <button type="button" onClick={drawAgain}>
            {say.drawTheBand}
          </button>
        </p>
      ) : null}
      {value && !stale ? (
        <p class="say">
          {say.kitchensDrawnMissCookMiss2(
            DRAWS,
            Math.round(value.missesCook * DRAWS),
            Math.round(value.missesCooling * DRAWS),
          )}
        </p>
      ) : null}
      <details class="worked">
        <summary>{say.whatTheBandIsDrawnFrom}</summary>
        <div class="worked-body">
          <p>{cookPlanWorkings.band}</p>
          <FigureTable
            columns={[say.whatIsNotKnown, say.oneSpread, say.from]}
            words
            rows={SPREAD_ROWS.map(([name, ...cells]) => ({ key: name, head: name, cells }))}
          />
        </div>
      </details>
    </section>
  );
}

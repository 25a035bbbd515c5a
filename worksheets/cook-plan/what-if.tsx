import { depthMmOf, type PlanChange, type PlanGround } from '@larderwright/calc/cook-plan';
import { enteredEntry, fixedText } from '@larderwright/calc/quantities';
import { useId } from 'preact/hooks';
import * as say from '#words/cook-plan/what-if.ts';
import { FittedChart } from '../charts/index.ts';
import { FigureTable } from '../parts/figure-table.tsx';
import { NotYet } from '../parts/not-yet.tsx';
import { editAt } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { PREDICTED_NAMES } from '../words/cook-plan-names.ts';
import type { CookPlanComputed } from './compute.ts';
import { $cookPlan } from './computed.ts';
import { trialChart } from './plan-chart.ts';
import { $depths, $outcome, $trial, endTrial, layDepths, tryOut } from './run.ts';
import { $look, SectionFigure, sectionAtMoment } from './section.tsx';
import { degreesText, timeWords } from './text.ts';

type Knob = keyof PlanChange;

interface KnobRow {
  readonly knob: Knob;
  readonly label: string;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly text: (value: number) => string;
  readonly own: (ground: PlanGround) => number | null;
}

const KNOBS: readonly KnobRow[] = [
  {
    knob: 'depthMm',
    label: say.depthOfTheMould,
    ...{ min: 25, max: 130, step: 1 },
    text: (mm) => say.mmIn(fixedText(mm, 0), fixedText(mm / 25.4, 1)),
    own: ({ mould }) => (mould === null ? null : depthMmOf(mould)),
  },
  {
    knob: 'mediumC',
    label: say.ovenSteamOrKettle,
    ...{ min: 60, max: 250, step: 1 },
    text: (tempC) => degreesText(tempC),
    own: ({ reading }) => reading.mediumC,
  },
  {
    knob: 'bathStartC',
    label: say.waterGoesInAt,
    ...{ min: 5, max: 100, step: 1 },
    text: (tempC) => degreesText(tempC),
    own: ({ reading }) => reading.bathStartC,
  },
  {
    knob: 'startC',
    label: say.coreWhenItGoesIn,
    ...{ min: 0, max: 25, step: 0.5 },
    text: (tempC) => `${fixedText(tempC, 1)} °C (${fixedText(tempC * 1.8 + 32, 1)} °F)`,
    own: ({ reading }) => reading.startC,
  },
  {
    knob: 'targetC',
    label: say.coreToReach,
    ...{ min: 50, max: 95, step: 0.5 },
    text: (tempC) => `${fixedText(tempC, 1)} °C (${fixedText(tempC * 1.8 + 32, 1)} °F)`,
    own: ({ targetC }) => targetC,
  },
];

/** What another depth, oven, bath, start or target would do. Nothing of it changes the plan. */
export function WhatIf() {
  const derived = useShared($cookPlan);
  const { value, stale } = useShared($outcome);
  const trial = useShared($trial);
  const look = useShared($look);
  if (derived.state !== 'ready' || value === null || stale)
    return <NotYet what={say.whatIfNotYetPlanItself} />;
  const plan = derived.value;
  const { ground } = plan;
  const tried = trial?.outcome ?? null;
  const section = sectionAtMoment(tried ?? value, look);
  return (
    <>
      <div class="sliders">
        {KNOBS.map((row) => (
          <Slider key={row.knob} row={row} ground={ground} change={trial?.change ?? {}} />
        ))}
      </div>
      <p class="buttons">
        <button type="button" disabled={trial === null} onClick={endTrial}>
          {say.backToThePlan}
        </button>
      </p>
      <div aria-live="polite">
        {trial === null ? (
          <p class="say">{say.moveASliderThePlanStays}</p>
        ) : trial.impossible ? (
          <p class="say">{say.cannotTellThereNoRoomNo}</p>
        ) : tried === null ? (
          <NotYet />
        ) : (
          <p class="say">
            {say.triedCooling(
              KNOBS.filter(({ knob }) => trial.change[knob] !== undefined)
                .map(({ label, knob, text }) => `${label.toLowerCase()} ${text(trial.change[knob] ?? 0)}`)
                .join(', '),
              <strong>
                {tried.prediction.targetMin === null
                  ? say.theCoreNeverGetsThere
                  : say.targetAfterPlanned(
                      timeWords(tried.prediction.targetMin),
                      value.prediction.targetMin === null ? say.never : timeWords(value.prediction.targetMin),
                    )}
              </strong>,
              PREDICTED_NAMES[tried.prediction.cooling?.state ?? 'cannot-tell'],
              tried.tier === 'preview' || trial.working ? say.roughWhileItMoves : '',
            )}
          </p>
        )}
      </div>
      <FittedChart model={trialChart(ground, value, tried)} title={say.triedBesideThePlan} />
      {section ? <SectionFigure model={section} /> : null}
      <Depths plan={plan} />
    </>
  );
}

function Slider({ row, ground, change }: { row: KnobRow; ground: PlanGround; change: PlanChange }) {
  const id = useId();
  const { knob, label, min, max, step, text, own } = row;
  const planned = own(ground);
  if (planned === null) return null;
  const value = change[knob] ?? planned;
  const move = (event: Event & { currentTarget: HTMLInputElement }, released: boolean) =>
    tryOut({ ...change, [knob]: Number(event.currentTarget.value) }, released);
  return (
    <div class="slider">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="range"
        min={Math.min(min, Math.floor(planned))}
        max={Math.max(max, Math.ceil(planned))}
        step={step}
        value={value}
        aria-valuetext={text(value)}
        onInput={(event) => move(event, false)}
        onChange={(event) => move(event, true)}
      />
      <output for={id}>
        {text(value)}
        {change[knob] === undefined ? say.asPlanned : say.planned(text(planned))}
      </output>
    </div>
  );
}

/** Depth against time, the cooling verdict beside it: what cooks in time may not cool in time. */
function Depths({ plan }: { plan: CookPlanComputed }) {
  const { value, working, done, stale, failed } = useShared($depths);
  const { coolSet, mould } = plan.ground;
  const take = (depthMm: number) => {
    if (mould === null) return;
    const dimension = mould.shape === 'half-cylinder' ? 'diameter' : 'depth';
    const mm = mould.shape === 'half-cylinder' ? 2 * depthMm : depthMm;
    editAt(`mould.moulds.${mould.id}.dimensions.${dimension}`, enteredEntry(String(mm), 'mm'));
  };
  const roll = mould?.shape === 'cylinder' && mould.dimensions.depth.text.trim() === '';
  return (
    <section aria-labelledby="depths">
      <h3 id="depths">{say.depthAgainstTime}</h3>
      <p class="say">{say.samePlanMouldsOtherDepthsWhat}</p>
      {value === null || stale ? (
        <p class="buttons">
          <button type="button" disabled={working} onClick={() => void layDepths()}>
            {working ? say.beingComputed(Math.round(done * 100)) : say.layOtherDepthsSideBySide}
          </button>
          {failed === null ? null : say.couldNotBeComputed(failed)}
        </p>
      ) : (
        <FigureTable
          caption={say.depthAgainstTimePredictedNot(coolSet === null ? '' : say.coolingBy(coolSet.title))}
          columns={[
            say.depth,
            say.toTheTarget,
            ...(coolSet?.legs.map((_, i) => say.leg(i + 1)) ?? []),
            say.cooling,
            '',
          ]}
          words
          rows={value.map(({ depthMm, prediction }) => ({
            key: String(depthMm),
            head: `${depthMm} mm`,
            cells: [
              prediction === null
                ? say.cannotTell
                : prediction.targetMin === null
                  ? say.never
                  : timeWords(prediction.targetMin),
              ...(coolSet?.legs ?? []).map(({ id }) => {
                const min = prediction?.cooling?.legs.find(({ legId }) => legId === id)?.elapsedMin;
                return min == null ? say.cannotTell : timeWords(min);
              }),
              PREDICTED_NAMES[prediction?.cooling?.state ?? 'cannot-tell'],
              roll ? null : (
                <button key="take" type="button" onClick={() => take(depthMm)}>
                  {say.useMm(depthMm)}
                </button>
              ),
            ],
          }))}
        />
      )}
    </section>
  );
}

import type { Finding } from '@larderwright/calc/findings';
import type { PlanStep, TimedStep } from '@larderwright/calc/plan';
import type { Unit } from '@larderwright/calc/quantities';
import { Fragment } from 'preact';
import * as say from '#words/plan-and-cost/steps.ts';
import { CouldNot } from '../parts/computed.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { RemovedRowLine, RowTools } from '../parts/row-tools.tsx';
import { TextField } from '../parts/text-field.tsx';
import { Worked } from '../parts/worked.tsx';
import { useAt, useShared } from '../state/use-shared.ts';
import { planWorkings } from '../words/plan.ts';
import { $plan } from './computed.ts';
import { stepName } from './field-names.ts';
import { momentText } from './moment-text.ts';
import { PlanNeeded } from './plan-needed.tsx';

const DURATIONS: readonly Unit[] = ['min', 'h', 'd'];

/** The steps back from the table, each with when it may begin. */
export function Steps() {
  const steps = useAt('plan.steps') as readonly PlanStep[];
  const computed = useShared($plan);
  const ready = computed.state === 'ready' ? computed.value : null;
  return (
    <>
      {computed.state === 'failed' ? <CouldNot detail={computed.detail} /> : null}
      {ready === null ? null : <PlanNeeded of={ready} figures={['plan.timeline']} />}
      <ol class="ledger">
        {steps.map((step, place) => (
          <Fragment key={step.id}>
            <RemovedRowLine list="plan.steps" place={place} as="li" />
            <StepRow
              step={step}
              place={place}
              last={place === steps.length - 1}
              timed={ready?.values.timeline.find(({ id }) => id === step.id) ?? null}
              findings={ready?.findings ?? []}
            />
          </Fragment>
        ))}
        <RemovedRowLine list="plan.steps" place={steps.length} as="li" />
      </ol>
      {steps.length === 0 ? (
        <p class="say">{say.noStepYetPutUsualOnes}</p>
      ) : (
        <Worked>
          <p>{say.beginNotBeforeDerivedDurations(planWorkings.latest, planWorkings.earliest)}</p>
        </Worked>
      )}
    </>
  );
}

interface StepRowProps {
  step: PlanStep;
  place: number;
  last: boolean;
  timed: TimedStep | null;
  findings: readonly Finding[];
}

function StepRow({ step, place, last, timed, findings }: StepRowProps) {
  const path = `plan.steps.${step.id}`;
  const name = stepName(step);
  return (
    <li class="ledger-row ledger-step" aria-label={name}>
      <p class="ledger-name">
        <strong>{name}</strong>
      </p>
      <NumberField path={`${path}.least`} label={say.atLeast} kind="time" units={DURATIONS} />
      <NumberField
        path={`${path}.most`}
        label={say.atMost}
        kind="time"
        units={DURATIONS}
        findings={at(findings, `${path}.most`)}
      />
      <dl class="ledger-figures">
        <div>
          <dt>{say.notBefore}</dt>
          <dd>{momentText(timed?.earliestStart ?? null)}</dd>
        </div>
        <div>
          <dt>{say.beginBy}</dt>
          <dd>{momentText(timed?.latestStart ?? null)}</dd>
        </div>
      </dl>
      <RowTools list="plan.steps" id={step.id} label={name} first={place === 0} last={last} />
      <details class="pack ledger-more">
        <summary>{say.itsNameHere}</summary>
        <TextField path={`${path}.name`} label={say.ownNameFor(name)} />
      </details>
    </li>
  );
}

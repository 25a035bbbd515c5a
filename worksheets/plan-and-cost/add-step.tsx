import { newPlanStep, type PlanStepKind, TERRINE_STEPS } from '@larderwright/calc/plan';
import { useId, useState } from 'preact/hooks';
import * as say from '#words/plan-and-cost/add-step.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { FieldFrame } from '../parts/field-frame.tsx';
import { at } from '../parts/finding-list.tsx';
import { newId } from '../state/clock.ts';
import { addRow } from '../state/rows.ts';
import { $batch, $life, editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { PLAN_STEP_NAMES } from '../words/plan-names.ts';
import { $plan } from './computed.ts';

/** Day and hour it is served: the clock of the kitchen, whatever the clocks do in between. */
export function ServingField() {
  const id = useId();
  const computed = useShared($plan);
  const waking = useShared($life) === 'waking';
  const servingAt = useAt('plan.servingAt');
  const value = typeof servingAt === 'string' ? servingAt.slice(0, 16) : '';
  return (
    <div class="fields">
      <FieldFrame
        id={id}
        label={say.servedOn}
        hint={say.dayTimeStepsCountedBackHere}
        findings={computed.state === 'ready' ? at(computed.value.findings, 'plan.servingAt') : []}
      >
        <input
          id={id}
          class="field-input field-words"
          type="datetime-local"
          value={value}
          readOnly={waking}
          aria-describedby={`${id}-says`}
          onInput={(event) => editAt('plan.servingAt', event.currentTarget.value || null)}
        />
      </FieldFrame>
    </div>
  );
}

const KINDS = Object.entries(PLAN_STEP_NAMES).map(([value, label]) => ({ value, label }));

/** Adds a step, or all steps of a cooked terrine at once. */
export function AddStep() {
  const [kind, setKind] = useState<PlanStepKind>('cook');
  const waking = useShared($life) === 'waking';
  const steps = useAt('plan.steps') as readonly unknown[];
  const addUsual = () =>
    editAt('plan.steps', [
      ...($batch.get().plan?.steps ?? []),
      ...TERRINE_STEPS.map((each) => newPlanStep(newId(), each)),
    ]);
  return (
    <div class="add-row">
      <ChoiceField
        label={say.stepToAdd}
        value={kind}
        choices={KINDS}
        onChoose={(value) => setKind(value as PlanStepKind)}
      />
      <button
        type="button"
        disabled={waking}
        onClick={() => addRow('plan.steps', newPlanStep(newId(), kind))}
      >
        {say.addTheStep}
      </button>
      {steps.length === 0 ? (
        <button type="button" class="press-first" disabled={waking} onClick={addUsual}>
          {say.putInTheStepsOfA}
        </button>
      ) : null}
    </div>
  );
}

import { newStep } from '@larderwright/calc/batch';
import type { Finding } from '@larderwright/calc/findings';
import type { ProcessStep, StepKind } from '@larderwright/calc/process';
import type { ComponentChildren } from 'preact';
import { at } from '../parts/finding-list.tsx';
import { MomentBox } from '../parts/moment-box.tsx';
import { NumberBox } from '../parts/number-box.tsx';
import { RemovedRowLine, RowTools } from '../parts/row-tools.tsx';
import { TextBox } from '../parts/text-box.tsx';
import { addRow } from '../state/rows.ts';
import { $life } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { changeStep, FIRST, stepHere } from './edits.ts';

const LIST = 'process.steps';
const KINDS = ['smoke', 'cook', 'reheat', 'chill'] as const;

const STEP_NAME: Record<StepKind, string> = {
  smoke: 'Smoke',
  cook: 'Cook',
  reheat: 'Reheat',
  chill: 'Chill',
};
const MEDIUM: Record<StepKind, string> = {
  smoke: 'Smokehouse air',
  cook: 'Bath, steam or oven around the product',
  reheat: 'Bath, steam or oven around the product',
  chill: 'Ice water or air around the product',
};
const START: Record<StepKind, string> = { smoke: 'In', cook: 'In', reheat: 'In', chill: 'Cooling began' };
const END: Record<StepKind, string> = { smoke: 'Out', cook: 'Out', reheat: 'Out', chill: 'Cold, put away' };

interface StepListProps {
  /** The step the blank form shows. */
  firstKind: StepKind;
  /** Only steps of these kinds are shown and offered. */
  kinds?: readonly StepKind[];
  findings?: readonly Finding[];
}

/** The steps the product goes through, in the order of the work, planned and as they happened. */
export function StepList({ firstKind, kinds = KINDS, findings = [] }: StepListProps) {
  const steps = useAt(LIST) as readonly ProcessStep[];
  const waking = useShared($life) === 'waking';
  const mine = steps.filter((step) => kinds.includes(step.kind));
  const shown = mine.length > 0 ? mine : [newStep(FIRST, firstKind)];
  return (
    <div class="steps">
      <ol class="steps-list">
        {shown.map((step, index) => (
          <li key={index === 0 ? FIRST : step.id}>
            <StepCard
              step={step}
              findings={findings}
              number={index + 1}
              tools={
                step.id === FIRST ? null : (
                  <RowTools
                    list={LIST}
                    id={step.id}
                    label={STEP_NAME[step.kind]}
                    first={step === steps[0]}
                    last={step === steps.at(-1)}
                  />
                )
              }
            />
          </li>
        ))}
      </ol>
      <RemovedRowLine list={LIST} />
      <p class="buttons">
        {kinds.map((kind) => (
          <button key={kind} type="button" disabled={waking} onClick={() => addStep(kind, firstKind)}>
            Add {STEP_NAME[kind].toLowerCase()}
          </button>
        ))}
      </p>
    </div>
  );
}

/** The step the blank form shows counts as there, though nothing was typed into it. */
function addStep(kind: StepKind, firstKind: StepKind): void {
  if (kind !== firstKind) changeStep(FIRST, firstKind, {});
  addRow(LIST, stepHere(kind));
}

interface StepCardProps {
  step: ProcessStep;
  number: number;
  findings: readonly Finding[];
  tools: ComponentChildren;
}

function StepCard({ step, number, findings, tools }: StepCardProps) {
  const path = `${LIST}.${step.id}`;
  const change = (patch: Partial<ProcessStep>) => changeStep(step.id, step.kind, patch);
  const name = STEP_NAME[step.kind];
  return (
    <fieldset class="step">
      <legend>
        {number}. {name}
      </legend>
      {tools}
      <div class="fields">
        <NumberBox
          label="Planned medium"
          kind="temperature"
          units={['C', 'F']}
          entry={step.medium}
          onEntry={(medium) => change({ medium })}
          hint={MEDIUM[step.kind]}
          findings={at(findings, `${path}.medium`)}
        />
        {step.kind === 'chill' ? null : (
          <NumberBox
            label="Planned oven"
            kind="temperature"
            units={['C', 'F']}
            entry={step.oven}
            onEntry={(oven) => change({ oven })}
            hint="Air over a water bath"
            findings={at(findings, `${path}.oven`)}
          />
        )}
        <MomentBox
          label={START[step.kind]}
          iso={step.startedAt}
          offerNow
          onMoment={(startedAt) => change({ startedAt })}
          findings={at(findings, `${path}.startedAt`)}
        />
        <MomentBox
          label={END[step.kind]}
          iso={step.endedAt}
          offerNow
          onMoment={(endedAt) => change({ endedAt })}
          findings={at(findings, `${path}.endedAt`)}
        />
        <TextBox label="Note" text={step.note} onText={(note) => change({ note })} />
      </div>
    </fieldset>
  );
}

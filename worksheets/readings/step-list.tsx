import { newStep } from '@larderwright/calc/batch';
import type { Finding } from '@larderwright/calc/findings';
import type { ProcessStep, StepKind } from '@larderwright/calc/process';
import type { ComponentChildren } from 'preact';
import * as say from '#words/readings/step-list.ts';
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
  smoke: say.smoke,
  cook: say.cook,
  reheat: say.reheat,
  chill: say.chill,
};
const MEDIUM: Record<StepKind, string> = {
  smoke: say.smokehouseAir,
  cook: say.bathSteamOvenAroundProduct,
  reheat: say.bathSteamOvenAroundProduct,
  chill: say.iceWaterOrAirAroundThe,
};
const START: Record<StepKind, string> = {
  smoke: say.inWord,
  cook: say.inWord,
  reheat: say.inWord,
  chill: say.coolingBegan,
};
const END: Record<StepKind, string> = {
  smoke: say.out,
  cook: say.out,
  reheat: say.out,
  chill: say.coldPutAway,
};

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
            {say.add(STEP_NAME[kind].toLowerCase())}
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
          label={say.plannedMedium}
          kind="temperature"
          units={['C', 'F']}
          entry={step.medium}
          onEntry={(medium) => change({ medium })}
          hint={MEDIUM[step.kind]}
          findings={at(findings, `${path}.medium`)}
        />
        {step.kind === 'chill' ? null : (
          <NumberBox
            label={say.plannedOven}
            kind="temperature"
            units={['C', 'F']}
            entry={step.oven}
            onEntry={(oven) => change({ oven })}
            hint={say.airOverAWaterBath}
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
        <TextBox label={say.note} text={step.note} onText={(note) => change({ note })} />
      </div>
    </fieldset>
  );
}

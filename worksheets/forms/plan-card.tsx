import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { WriteIn } from '../batch-sheet/write-in.tsx';
import { BLANK_HEAD, type CardHead } from '../parts/blank-head.ts';
import { PrintCard } from '../parts/print-card.tsx';
import { PLAN_WORDS, STEP_WORDS } from '../words/haccp.ts';
import { BLANK_PLAN, type PlanSheet, type PlanStep } from './plan-model.ts';

interface PlanCardProps {
  /** Null: the empty form. */
  plan: PlanSheet | null;
  head: CardHead | null;
  stops: readonly string[];
  paper: Paper;
  standing: string;
}

/** The draft of a plan on one page: the product, what it rests on, the steps, who approves it. */
export function PlanCard({ plan, head, stops, paper, standing }: PlanCardProps) {
  const shown = plan ?? BLANK_PLAN;
  return (
    <PrintCard
      title={PLAN_WORDS.title}
      head={head ?? BLANK_HEAD}
      paper={paper}
      stops={stops}
      standing={standing}
      noRules={PLAN_WORDS.noRules}
    >
      <p class="sheet-state">{PLAN_WORDS.draft}</p>
      {shown.beyond ? <p class="rule-line">{PLAN_WORDS.notCovered}</p> : null}
      <div class="write-row">
        <WriteIn label="Product" value={shown.product} broad />
        <WriteIn label="Kitchen" value={shown.kitchen} wide />
        <WriteIn label="Family" value={shown.family} wide />
        <WriteIn label="Flow drawn, walked" unit="day" />
      </div>
      <div class="write-row">
        <WriteIn label="Salt on water" value={shown.saltOnWater} unit="%" />
        <WriteIn label="Nitrite" value={shown.nitrite} unit="mg/kg" />
        <WriteIn label="pH, if relied on" />
        <WriteIn label="aw, if relied on" />
        <WriteIn label="Packing" value={shown.packing} />
        <WriteIn label="Who eats it; vulnerable?" value={shown.users} wide />
      </div>
      <StepTable steps={shown.steps} />
      <div class="tick-boxes">
        {PLAN_WORDS.before.map((text) => (
          <span class="tick-box" key={text}>
            {text}
          </span>
        ))}
      </div>
      <div class="write-row">
        <WriteIn label="Team" wide />
        <WriteIn label="Completed for the business by" wide />
        <WriteIn label="Approved by (practice, authority)" wide />
        <WriteIn label="Day" />
        <WriteIn label="Review by" />
      </div>
    </PrintCard>
  );
}

function StepTable({ steps }: { steps: readonly PlanStep[] }) {
  return (
    <table class="sheet-table plan-table">
      <colgroup>
        <col class="plan-step" />
        <col class="plan-control" />
        <col class="plan-limit" />
        <col class="plan-watch" />
        <col class="plan-who" />
        <col />
        <col class="plan-check" />
      </colgroup>
      <thead>
        <tr>
          {PLAN_WORDS.columns.map((column) => (
            <th key={column} scope="col">
              {column}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {steps.map((step) => (
          <StepRow key={step.id} step={step} />
        ))}
      </tbody>
    </table>
  );
}

function StepRow({ step: { id, limit, unit } }: { step: PlanStep }) {
  const { step, hazard, control, point, watch, correct, verify } = STEP_WORDS[id];
  return (
    <tr data-point={point}>
      <th scope="row">
        <strong>{step}:</strong> {hazard}
      </th>
      <td>
        <strong>{point}</strong> {control}
      </td>
      <td class={limit ? undefined : 'plan-open'}>
        {limit ? limit.map((line) => <p key={line}>{line}</p>) : unit}
      </td>
      <td>{watch}</td>
      <td />
      <td>{correct}</td>
      <td>{verify}</td>
    </tr>
  );
}

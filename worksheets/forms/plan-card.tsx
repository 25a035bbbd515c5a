import * as say from '#words/forms/plan-card.ts';
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
        <WriteIn label={say.product} value={shown.product} broad />
        <WriteIn label={say.kitchen} value={shown.kitchen} wide />
        <WriteIn label={say.family} value={shown.family} wide />
        <WriteIn label={say.flowDrawnWalked} unit="day" />
      </div>
      <div class="write-row">
        <WriteIn label={say.saltOnWater} value={shown.saltOnWater} unit="%" />
        <WriteIn label={say.nitrite} value={shown.nitrite} unit="mg/kg" />
        <WriteIn label={say.phIfReliedOn} />
        <WriteIn label={say.awIfReliedOn} />
        <WriteIn label={say.packing} value={shown.packing} />
        <WriteIn label={say.whoEatsItVulnerable} value={shown.users} wide />
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
        <WriteIn label={say.team} wide />
        <WriteIn label={say.completedForTheBusinessBy} wide />
        <WriteIn label={say.approvedByPracticeAuthority} wide />
        <WriteIn label={say.day} />
        <WriteIn label={say.reviewBy} />
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

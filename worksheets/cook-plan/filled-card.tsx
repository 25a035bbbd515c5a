import type { PlanOutcome } from '@larderwright/calc/cook-plan';
import * as say from '#words/cook-plan/filled-card.ts';
import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { CurveChart } from '../charts/curve-chart.tsx';
import { SectionPicture, sectionSummary } from '../charts/section-picture.tsx';
import { CardBlocks } from '../parts/card-blocks.tsx';
import { PrintCard } from '../parts/print-card.tsx';
import { stopLines } from '../parts/stop-lines.ts';
import { useShared } from '../state/use-shared.ts';
import { COOK_PLAN_TRUST_SHORT } from '../words/cook-plan-names.ts';
import { $cookPlan } from './computed.ts';
import { planBlocks } from './plan-blocks.ts';
import { planChart } from './plan-chart.ts';
import { $bands, $outcome } from './run.ts';
import { sectionAtMoment } from './section.tsx';

/** On paper the chart is as wide as the card, px of 0.75 pt. */
const CHART = { width: 660, height: 165 } as const;

/** Two cuts stand side by side, each with its words beside it; figures on paper keep their 9 pt. */
const CUT_WIDE = 170;

/** The card with everything known. A stale curve does not go to paper. */
export function FilledCard({ paper, standing }: { paper: Paper; standing: string }) {
  const derived = useShared($cookPlan);
  const run = useShared($outcome);
  const band = useShared($bands);
  if (derived.state !== 'ready') return null;
  const plan = derived.value;
  const outcome = run.stale ? null : run.value;
  const bands = band.stale ? null : band.value;
  const { findings, values } = plan.judge(outcome);
  return (
    <PrintCard
      title={say.cookPlan}
      head={plan.head}
      paper={paper}
      stops={stopLines([], findings)}
      standing={standing}
    >
      <CardBlocks blocks={planBlocks(plan, values.levelMm, outcome, bands)} />
      <p class="rule-line">{COOK_PLAN_TRUST_SHORT}</p>
      {outcome === null ? (
        <p class="rule-line">{say.theCurveIsNotComputed}</p>
      ) : (
        <>
          <div class="card-chart">
            <CurveChart model={planChart(plan.ground, outcome, bands)} size={CHART} />
          </div>
          <Cuts outcome={outcome} />
        </>
      )}
    </PrintCard>
  );
}

/** The cut when the heat ends and when the core is at its peak. */
function Cuts({ outcome }: { outcome: PlanOutcome }) {
  const moments = [outcome.prediction.heatEndMin, outcome.prediction.peak.timeMin];
  return (
    <div class="card-cuts">
      {moments.map((timeMin, i) => {
        const model = sectionAtMoment(outcome, timeMin);
        return model === null ? null : (
          <figure key={`${i}-${timeMin}`}>
            <SectionPicture model={model} width={CUT_WIDE} />
            <figcaption>{sectionSummary(model)}</figcaption>
          </figure>
        );
      })}
    </div>
  );
}

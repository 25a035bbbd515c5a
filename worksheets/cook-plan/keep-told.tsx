import { CALC_VERSION, checksum } from '@larderwright/calc/batch';
import { toldPlan } from '@larderwright/calc/cook-plan';
import * as say from '#words/cook-plan/keep-told.ts';
import { wallOf } from '../parts/clock-text.ts';
import { nowIso } from '../state/clock.ts';
import { edit } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import type { CookPlanComputed } from './compute.ts';
import { $bands, $outcome } from './run.ts';

/** Keeps what the plan predicts, so that the sheet can show it beside the log. */
export function KeepTold({ plan }: { plan: CookPlanComputed }) {
  const run = useShared($outcome);
  const bands = useShared($bands);
  const { told } = plan.slice;
  const { problem } = plan.ground;
  const ready = run.value !== null && !run.stale && bands.value !== null && !bands.stale;
  const keep = () => {
    if (problem === null || run.value === null || bands.value === null) return;
    const kept = { at: nowIso(), calcVersion: CALC_VERSION, ofPlan: checksum(plan.key) };
    const told = toldPlan(problem, run.value, bands.value, kept);
    edit((batch) => ({ ...batch, cookPlan: { ...plan.slice, ...batch.cookPlan, told } }));
  };
  const wall = told ? wallOf(told.at) : null;
  const changed = told !== undefined && told.ofPlan !== checksum(plan.key);
  return (
    <div aria-live="polite">
      {wall ? (
        <p class="say">
          {say.keptAt(wall.date, wall.clock)} {changed ? <strong>{say.changed}</strong> : null}
        </p>
      ) : null}
      {told === undefined || changed ? (
        <>
          <p class="buttons">
            <button type="button" disabled={!ready} onClick={keep}>
              {told === undefined ? say.keepForSheet : say.keepAnew}
            </button>
          </p>
          <p class="say">{ready ? say.willPrint : say.bandFirst}</p>
        </>
      ) : null}
    </div>
  );
}

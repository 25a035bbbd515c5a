import { useContext } from 'preact/hooks';
import * as say from '#words/drying/plan-stop.ts';
import { Links } from '../parts/links.ts';
import { useAt } from '../state/use-shared.ts';
import { approvedPlanWords } from '../words/approved-plan.ts';

/** The stop of this worksheet. It stands on top whatever is written below, and in the page before any script. */
export function PlanStop() {
  const links = useContext(Links);
  const plan = String(useAt('drying.approvedPlan') ?? '').trim();
  const { title, body } = approvedPlanWords(plan === '' ? {} : { plan });
  const url = links.cautions['selling-needs-approval'];
  return (
    <div class="finding plan-stop" data-severity="stop">
      <p>
        <strong class="finding-word">{say.stop}</strong> {title} <span class="finding-body">{body}</span>
        {url ? (
          <>
            {' '}
            <a href={url}>{say.why}</a>
          </>
        ) : null}
      </p>
    </div>
  );
}

import type { SiteLinks } from '../parts/links.ts';
import { CardDesk } from '../parts/print-card.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { useShared } from '../state/use-shared.ts';
import { PLAN_WORDS } from '../words/haccp.ts';
import { $forms } from './computed.ts';
import { PlanCard } from './plan-card.tsx';

/** The draft of a plan, with the limits of the batch on the bench. */
export default function HaccpPlan({ links, standing }: { links: SiteLinks; standing: string }) {
  const computed = useShared($forms);
  const ready = computed.state === 'ready' ? computed.value : null;
  return (
    <WorksheetFrame links={links}>
      <CardDesk about={PLAN_WORDS.about}>
        {(paper) => (
          <PlanCard
            plan={ready?.plan ?? null}
            head={ready?.head ?? null}
            stops={ready?.stops ?? []}
            paper={paper}
            standing={standing}
          />
        )}
      </CardDesk>
    </WorksheetFrame>
  );
}

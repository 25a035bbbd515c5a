import type { SiteLinks } from '../parts/links.ts';
import { CardDesk } from '../parts/print-card.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { useShared } from '../state/use-shared.ts';
import { LOG_WORDS } from '../words/forms.ts';
import { $forms } from './computed.ts';
import { LogCard } from './log-card.tsx';

/** Cook and cooling of the batch on the bench as a sheet of its own. */
export default function CookAndCoolLog({ links, standing }: { links: SiteLinks; standing: string }) {
  const computed = useShared($forms);
  const ready = computed.state === 'ready' ? computed.value : null;
  return (
    <WorksheetFrame links={links}>
      <CardDesk about={LOG_WORDS.about}>
        {(paper) => (
          <LogCard
            log={ready?.log[paper] ?? null}
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

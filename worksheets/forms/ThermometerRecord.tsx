import { BLANK_HEAD } from '../parts/blank-head.ts';
import { CardBlocks } from '../parts/card-blocks.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { CardDesk, PrintCard } from '../parts/print-card.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { useShared } from '../state/use-shared.ts';
import { THERMOMETER_LOG_WORDS } from '../words/forms.ts';
import { $thermometerRecord } from './computed.ts';
import { thermometerLogBlocks } from './kitchen-blocks.ts';

/** The record of thermometer checks over many weeks; the last checks on the bench stand in its first rows. */
export default function ThermometerRecord({ links, standing }: { links: SiteLinks; standing: string }) {
  const computed = useShared($thermometerRecord);
  const ready = computed.state === 'ready' ? computed.value : null;
  return (
    <WorksheetFrame links={links}>
      <CardDesk about={THERMOMETER_LOG_WORDS.about}>
        {(paper) => (
          <PrintCard
            title={THERMOMETER_LOG_WORDS.title}
            head={ready?.head ?? BLANK_HEAD}
            number={null}
            paper={paper}
            stops={ready?.stops ?? []}
            standing={standing}
            noRules={THERMOMETER_LOG_WORDS.noRules}
          >
            <CardBlocks
              blocks={thermometerLogBlocks(ready?.kitchen ?? null, ready?.boils ?? null, ready?.rows ?? [])}
            />
          </PrintCard>
        )}
      </CardDesk>
    </WorksheetFrame>
  );
}

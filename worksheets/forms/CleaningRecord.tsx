import { BLANK_HEAD } from '../parts/blank-head.ts';
import { CardBlocks } from '../parts/card-blocks.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { CardDesk, PrintCard } from '../parts/print-card.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { $batch, $life } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { CLEANING_WORDS } from '../words/forms.ts';
import { cleaningBlocks } from './kitchen-blocks.ts';

/** The cleaning record of a week. It is of no one batch: the bench gives the kitchen's name and nothing else. */
export default function CleaningRecord({ links, standing }: { links: SiteLinks; standing: string }) {
  const { product } = useShared($batch);
  const kitchen = useShared($life) === 'open' ? product.kitchen.trim() || null : null;
  return (
    <WorksheetFrame links={links}>
      <CardDesk about={CLEANING_WORDS.about}>
        {(paper) => (
          <PrintCard
            title={CLEANING_WORDS.title}
            head={BLANK_HEAD}
            number={null}
            paper={paper}
            stops={[]}
            standing={standing}
            noRules={CLEANING_WORDS.noRules}
          >
            <CardBlocks blocks={cleaningBlocks(kitchen)} />
          </PrintCard>
        )}
      </CardDesk>
    </WorksheetFrame>
  );
}

import type { Batch, HistoryEntry } from '@larderwright/calc/batch';
import { CardBlocks } from '../parts/card-blocks.tsx';
import { cardHead } from '../parts/card-head.ts';
import { PrintCard } from '../parts/print-card.tsx';
import { nowIso } from '../state/clock.ts';
import { historyWords } from './history-words.ts';
import { usePaper } from './use-paper.ts';

/** Enough of a checksum to compare by eye; the record has all of it. */
const SHOWN_OF_SUM = 8;

export interface HistoryPaperProps {
  batch: Batch;
  history: readonly HistoryEntry[];
  fault: number | null;
}

/** The history as it prints. */
export function HistoryPaper({ batch, history, fault }: HistoryPaperProps) {
  const [paper] = usePaper();
  return (
    <div class="history-paper">
      <PrintCard
        title="History of changes"
        head={cardHead(batch, [], nowIso())}
        paper={paper}
        stops={fault === null ? [] : [`Entry ${fault + 1} does not fit those before it.`]}
        standing="What was changed in the record after it was first written down. It shows a slip or a careless hand, and is no proof against someone who means to deceive."
        noRules="No rule is judged here"
      >
        <CardBlocks
          blocks={[
            {
              title: `${history.length} change${history.length === 1 ? '' : 's'}, the first on top`,
              table: {
                columns: ['When', 'What', 'From', 'To', 'Who', 'Sum'],
                rows: history.map((entry) => {
                  const { when, what, from, to, who } = historyWords(entry);
                  return [when, what, from, to, who, entry.sum.slice(0, SHOWN_OF_SUM)];
                }),
              },
            },
            { title: 'Read by', rows: [[{ label: 'Name', wide: true }, { label: 'Date' }]] },
          ]}
        />
      </PrintCard>
    </div>
  );
}

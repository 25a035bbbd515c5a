import type { Batch, HistoryEntry } from '@larderwright/calc/batch';
import * as say from '#words/batch-sheet/history-paper.ts';
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
        title={say.historyOfChanges}
        head={cardHead(batch, [], nowIso())}
        paper={paper}
        stops={fault === null ? [] : [say.entryDoesNotFitThoseBefore(fault + 1)]}
        standing={say.whatChangedRecordAfterFirst}
        noRules={say.noRuleIsJudgedHere}
      >
        <CardBlocks
          blocks={[
            {
              title: say.changeSTheFirstOnTop(history.length),
              table: {
                columns: [say.when, say.what, say.from, say.to, say.who, say.sum],
                rows: history.map((entry) => {
                  const { when, what, from, to, who } = historyWords(entry);
                  return [when, what, from, to, who, entry.sum.slice(0, SHOWN_OF_SUM)];
                }),
              },
            },
            { title: say.readBy, rows: [[{ label: say.name, wide: true }, { label: say.date }]] },
          ]}
        />
      </PrintCard>
    </div>
  );
}

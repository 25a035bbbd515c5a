import { type Batch, type HistoryEntry, historyFault } from '@larderwright/calc/batch';
import { useEffect, useState } from 'preact/hooks';
import { CardBlocks } from '../parts/card-blocks.tsx';
import { cardHead } from '../parts/card-head.ts';
import { wallOf } from '../parts/clock-text.ts';
import { PrintCard } from '../parts/print-card.tsx';
import { nowIso } from '../state/clock.ts';
import { $history } from '../state/kept-history.ts';
import { $batch } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { fieldWords } from '../words/fields.ts';
import { usePaper } from './use-paper.ts';

const when = (iso: string) => {
  const wall = wallOf(iso);
  return wall ? `${wall.date} ${wall.clock.slice(0, 5)}` : iso;
};
const blank = (text: string) => (text === '' ? 'blank' : text);
const whatOf = ({ what, row }: HistoryEntry) => [row, fieldWords(what)].filter(Boolean).join(': ');
/** Enough of a checksum to compare by eye; the record has all of it. */
const shortSum = (sum: string) => sum.slice(0, 8);

/** What was changed among readings, weights and signatures, on screen and on paper. */
export function ChangeHistory() {
  const batch = useShared($batch);
  const kept = useShared($history);
  const history = kept?.batchId === batch.id ? kept.history : batch.history;
  const [onPaper, setOnPaper] = useState(false);
  const fault = historyFault(batch.id, history);
  // The card is set first, then the browser's own window opens on it.
  useEffect(() => {
    if (!onPaper) return;
    const root = document.documentElement;
    const over = () => setOnPaper(false);
    root.dataset.paper = 'history';
    addEventListener('afterprint', over, { once: true });
    print();
    return () => {
      delete root.dataset.paper;
      removeEventListener('afterprint', over);
    };
  }, [onPaper]);
  return (
    <>
      <h3>History of changes</h3>
      {fault === null ? null : (
        <div class="finding" data-severity="caution" role="alert">
          <p>
            <strong class="finding-word">Check</strong> Entry {fault + 1} does not fit those before it. The
            history was changed outside this site.
          </p>
        </div>
      )}
      {history.length === 0 ? (
        <p class="say">No reading, weight or signature was changed after it was first written down.</p>
      ) : (
        <>
          <details class="worked">
            <summary>
              {history.length} change{history.length === 1 ? '' : 's'}
            </summary>
            <HistoryTable history={history} />
          </details>
          <p class="buttons">
            <button type="button" onClick={() => setOnPaper(true)}>
              Print the history
            </button>
          </p>
        </>
      )}
      {onPaper ? <HistoryPaper batch={batch} history={history} fault={fault} /> : null}
    </>
  );
}

function HistoryTable({ history }: { history: readonly HistoryEntry[] }) {
  return (
    <section class="scroll" tabindex={0} aria-label="History of changes">
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">When</th>
            <th scope="col">What</th>
            <th scope="col">From</th>
            <th scope="col">To</th>
            <th scope="col">Who</th>
          </tr>
        </thead>
        <tbody>
          {history.toReversed().map((entry) => (
            <tr key={entry.sum}>
              <td>{when(entry.at)}</td>
              <td>{whatOf(entry)}</td>
              <td>{blank(entry.from)}</td>
              <td>{blank(entry.to)}</td>
              <td>{entry.by || 'not said'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

interface HistoryPaperProps {
  batch: Batch;
  history: readonly HistoryEntry[];
  fault: number | null;
}

function HistoryPaper({ batch, history, fault }: HistoryPaperProps) {
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
                rows: history.map((entry) => [
                  when(entry.at),
                  whatOf(entry),
                  blank(entry.from),
                  blank(entry.to),
                  entry.by || 'not said',
                  shortSum(entry.sum),
                ]),
              },
            },
            { title: 'Read by', rows: [[{ label: 'Name', wide: true }, { label: 'Date' }]] },
          ]}
        />
      </PrintCard>
    </div>
  );
}

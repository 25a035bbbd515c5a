import { type HistoryEntry, historyFault } from '@larderwright/calc/batch';
import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { $history } from '../state/kept-history.ts';
import { $batch } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import type { HistoryPaperProps } from './history-paper.tsx';
import { historyWords } from './history-words.ts';

/** What was changed among readings, weights and signatures, on screen and on paper. */
export function ChangeHistory() {
  const batch = useShared($batch);
  const kept = useShared($history);
  const history = kept?.batchId === batch.id ? kept.history : batch.history;
  const [Paper, setPaper] = useState<{ of: ComponentType<HistoryPaperProps> } | null>(null);
  const fault = historyFault(batch.id, history);
  // The card is set first, then the browser's own window opens on it.
  useEffect(() => {
    if (!Paper) return;
    const root = document.documentElement;
    const over = () => setPaper(null);
    root.dataset.paper = 'history';
    addEventListener('afterprint', over, { once: true });
    print();
    return () => {
      delete root.dataset.paper;
      removeEventListener('afterprint', over);
    };
  }, [Paper]);
  const set = async () => {
    const { HistoryPaper } = await import('./history-paper.tsx');
    setPaper({ of: HistoryPaper });
  };
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
            <button type="button" onClick={() => void set()}>
              Print the history
            </button>
          </p>
        </>
      )}
      {Paper ? <Paper.of batch={batch} history={history} fault={fault} /> : null}
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
          {history.toReversed().map((entry) => {
            const { when, what, from, to, who } = historyWords(entry);
            return (
              <tr key={entry.sum}>
                <td>{when}</td>
                <td>{what}</td>
                <td>{from}</td>
                <td>{to}</td>
                <td>{who}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}

import { type HistoryEntry, historyFault } from '@larderwright/calc/batch';
import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import * as say from '#words/batch-sheet/change-history.ts';
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
      <h3>{say.historyOfChanges}</h3>
      {fault === null ? null : (
        <div class="finding" data-severity="caution" role="alert">
          <p>
            <strong class="finding-word">{say.check}</strong> {say.entryDoesNotFitThoseBefore(fault + 1)}
          </p>
        </div>
      )}
      {history.length === 0 ? (
        <p class="say">{say.noReadingWeightSignature}</p>
      ) : (
        <>
          <details class="worked">
            <summary>{say.changeS(history.length)}</summary>
            <HistoryTable history={history} />
          </details>
          <p class="buttons">
            <button type="button" onClick={() => void set()}>
              {say.printTheHistory}
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
    <section class="scroll" tabindex={0} aria-label={say.historyOfChanges}>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">{say.when}</th>
            <th scope="col">{say.what}</th>
            <th scope="col">{say.from}</th>
            <th scope="col">{say.to}</th>
            <th scope="col">{say.who}</th>
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

import { type IssuedAssessment, issueAssessment, issuedDifferences } from '@larderwright/calc/batch';
import { useEffect } from 'preact/hooks';
import * as say from '#words/batch-sheet/as-issued.ts';
import { wallOf } from '../parts/clock-text.ts';
import { nowIso } from '../state/clock.ts';
import { $batch, edit } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { $sheet } from './computed.ts';

/** Issued copies of the assessment kept with the record; the oldest go first. */
const KEPT = 20;

/** Keeps the assessment as it goes to paper. Printing twice without a change keeps one. */
function keepIssued(): void {
  const computed = $sheet.get();
  if (computed.state !== 'ready') return;
  const { assessment, composition } = computed.value;
  const last = $batch.get().issued.at(-1);
  if (last && issuedDifferences(last, assessment).length === 0) return;
  const issued = issueAssessment($batch.get(), assessment, composition, nowIso());
  edit((batch) => ({ ...batch, issued: [...batch.issued, issued].slice(-KEPT) }));
}

const moment = (iso: string) => {
  const wall = wallOf(iso);
  return wall ? `${wall.date} ${wall.clock}` : iso;
};

/** "As issued" beside "today", where they differ. Listens for the print itself, however it is asked for. */
export function AsIssued() {
  const computed = useShared($sheet);
  const issued = useAt('issued') as IssuedAssessment[];
  useEffect(() => {
    addEventListener('beforeprint', keepIssued);
    return () => removeEventListener('beforeprint', keepIssued);
  }, []);
  const last = issued.at(-1);
  if (!last || computed.state !== 'ready') return null;
  const differences = issuedDifferences(last, computed.value.assessment);
  if (differences.length === 0)
    return <p class="say">{say.lastPrintedNothingReads(moment(last.issuedAt))}</p>;
  return (
    <div class="as-issued">
      <p>
        <strong>{say.lastPrintedRecomputedToday(moment(last.issuedAt))}</strong>
      </p>
      <table>
        <thead>
          <tr>
            <th scope="col">{say.what}</th>
            <th scope="col">{say.asIssued}</th>
            <th scope="col">{say.today}</th>
          </tr>
        </thead>
        <tbody>
          {differences.map((difference) => (
            <tr key={difference.what}>
              <th scope="row">{difference.what}</th>
              <td>{difference.issued}</td>
              <td>{difference.today}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

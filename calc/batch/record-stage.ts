import type { Finding, StageResult, Verdict } from '../findings/index.ts';
import { checkLog } from '../probe-log/index.ts';
import type { Batch } from './record.ts';

export type RecordFindingId =
  | 'record.no-batch-number'
  | 'record.fail-without-decision'
  | 'record.released-while-failing'
  | 'record.made-and-checked-by-one'
  | 'record.entered-late'
  | 'record.readings-left-out';

type RecordFinding = Finding<RecordFindingId>;

const samePerson = (a: string, b: string) =>
  a.trim() !== '' && a.trim().toLocaleLowerCase('en') === b.trim().toLocaleLowerCase('en');

/**
 * What the record itself has to say, once every limit is judged: who signed, what was decided about a
 * failure, which readings were written down late or left out.
 *
 * @param verdicts of all the stages
 */
export function recordStage(
  batch: Batch,
  verdicts: readonly Verdict[],
): StageResult<Record<string, never>, RecordFindingId> {
  const findings: RecordFinding[] = [];
  const say = (finding: Omit<RecordFinding, 'stage' | 'params'> & { params?: RecordFinding['params'] }) =>
    findings.push({ stage: 'record', params: {}, ...finding });

  if (batch.product.batchNo.trim() === '') {
    say({ id: 'record.no-batch-number', severity: 'note', field: 'product.batchNo' });
  }

  const decisions = batch.deviations.map((deviation) => deviation.decision);
  if (verdicts.some((verdict) => verdict.state === 'fail')) {
    if (decisions.every((decision) => decision === '')) {
      say({ id: 'record.fail-without-decision', severity: 'stop', field: 'deviations' });
    } else if (decisions.includes('release')) {
      say({ id: 'record.released-while-failing', severity: 'stop', field: 'deviations' });
    }
  }

  const signed = (role: 'made' | 'checked') => batch.signOffs.find((sign) => sign.role === role)?.name ?? '';
  if (samePerson(signed('made'), signed('checked'))) {
    say({ id: 'record.made-and-checked-by-one', severity: 'caution', field: 'signOffs' });
  }

  for (const log of batch.process.logs) {
    const checked = checkLog(log).readings;
    const late = checked.filter((reading) => reading.enteredLateMin !== null);
    const [first] = late;
    if (first) {
      say({
        id: 'record.entered-late',
        severity: 'caution',
        field: `process.logs.${log.id}`,
        params: { log: log.name, count: late.length, readAt: first.at, lateMin: first.enteredLateMin ?? 0 },
      });
    }
    const excluded = checked.filter((reading) => reading.state === 'excluded');
    if (excluded.length > 0) {
      say({
        id: 'record.readings-left-out',
        severity: 'caution',
        field: `process.logs.${log.id}`,
        params: { log: log.name, count: excluded.length },
      });
    }
  }
  return { values: {}, findings, verdicts: [], missing: [] };
}

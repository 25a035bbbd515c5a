import type { Finding, StageResult, Verdict } from '../findings/index.ts';
import { checkLog } from '../probe-log/index.ts';
import type { Batch } from './record.ts';
import { samePerson } from './same-person.ts';
import { stateOf } from './state.ts';
import { unconfirmedRuleSets } from './unconfirmed.ts';

export type RecordFindingId =
  | 'record.no-batch-number'
  | 'record.fail-without-decision'
  | 'record.released-while-failing'
  | 'record.made-and-checked-by-one'
  | 'record.entered-late'
  | 'record.readings-left-out'
  | 'record.held'
  | 'record.discarded'
  | 'record.release-no-longer-holds'
  | 'record.changed-after-release'
  | 'record.rule-set-unconfirmed';

type RecordFinding = Finding<RecordFindingId>;

/** Where the batch stands by what persons said of it: out of use, or released on grounds that are gone. */
function stateFindings(batch: Batch, verdicts: readonly Verdict[]): Omit<RecordFinding, 'stage'>[] {
  const { state, change } = stateOf(batch);
  if (!change) return [];
  const { at, by, why } = change;
  const field = 'lifecycle';
  if (state === 'held') return [{ id: 'record.held', severity: 'stop', field, params: { at, by, why } }];
  if (state === 'discarded')
    return [{ id: 'record.discarded', severity: 'stop', field, params: { at, by, why } }];
  if (state !== 'released') return [];
  const findings: Omit<RecordFinding, 'stage'>[] = [];
  if (verdicts.some((verdict) => verdict.state !== 'pass'))
    findings.push({ id: 'record.release-no-longer-holds', severity: 'stop', field, params: { at, by } });
  const changes = batch.history.filter(
    (entry) => Date.parse(entry.at) > Date.parse(at) && !/^(lifecycle|dispatches)\b/.test(entry.what),
  ).length;
  if (changes > 0)
    findings.push({
      id: 'record.changed-after-release',
      severity: 'caution',
      field,
      params: { at, count: changes },
    });
  return findings;
}

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

  for (const { field, subject } of unconfirmedRuleSets(batch)) {
    say({ id: 'record.rule-set-unconfirmed', severity: 'caution', field, params: { subject } });
  }

  const decisions = batch.deviations.map((deviation) => deviation.decision);
  if (verdicts.some((verdict) => verdict.state === 'fail')) {
    if (decisions.every((decision) => decision === '')) {
      say({ id: 'record.fail-without-decision', severity: 'stop', field: 'deviations' });
    } else if (decisions.includes('release')) {
      say({ id: 'record.released-while-failing', severity: 'stop', field: 'deviations' });
    }
  }

  for (const finding of stateFindings(batch, verdicts)) say(finding);

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

import type { Finding, Verdict } from '../findings/index.ts';
import type { Batch, BatchState, StateChange } from './record.ts';
import { samePerson } from './same-person.ts';
import { type Unconfirmed, unconfirmedRuleSets } from './unconfirmed.ts';

/**
 * Where a batch may go from each state. A released one can be called back, a discarded one stays out of reach of a
 * release: only a slip of the thumb takes it back, to where it is held and looked at.
 */
const NEXT: Readonly<Record<BatchState, readonly BatchState[]>> = {
  planned: ['in-process', 'held', 'discarded'],
  'in-process': ['held', 'released', 'discarded'],
  held: ['in-process', 'released', 'discarded'],
  released: ['held', 'discarded'],
  discarded: ['held'],
};

/** Whether anything of the batch was weighed, filled, started or read. */
function isBegun({ formula, mould, process }: Batch): boolean {
  return (
    process.logs.some(({ readings }) => readings.length > 0) ||
    process.steps.some(({ startedAt }) => startedAt !== null) ||
    formula.lines.some(({ actual }) => actual.text.trim() !== '') ||
    mould.moulds.some(({ actualFills }) => actualFills.some(({ text }) => text.trim() !== ''))
  );
}

/** The state of a batch; `change` is null where nobody said it and it follows from what was measured. */
export function stateOf(batch: Batch): { state: BatchState; change: StateChange | null } {
  const change = batch.lifecycle.at(-1) ?? null;
  const unsaid = isBegun(batch) ? 'in-process' : 'planned';
  // "Planned" was said before the work: the work itself says that it has begun.
  return change === null || change.state === 'planned'
    ? { state: unsaid, change: unsaid === change?.state ? change : null }
    : { state: change.state, change };
}

/** States a batch may be brought into from the one it is in. */
export function nextStates(batch: Batch): readonly BatchState[] {
  return NEXT[stateOf(batch).state];
}

/** Why a change of state is refused. */
export type StateBar =
  | { readonly id: 'no-such-step' }
  | { readonly id: 'nobody-named' }
  | { readonly id: 'no-reason' }
  | { readonly id: 'no-batch-number' }
  | { readonly id: 'no-second-person' }
  | { readonly id: 'second-is-the-first' }
  | { readonly id: 'second-made-it' }
  | { readonly id: 'nothing-judged' }
  | { readonly id: 'verdict'; readonly verdict: Verdict }
  | { readonly id: 'stop'; readonly finding: Finding }
  | { readonly id: 'deviation-open'; readonly number: number }
  | { readonly id: 'rule-set-unconfirmed'; readonly subject: Unconfirmed['subject'] };

/** What a release is judged by: all verdicts and findings of the batch as it stands. */
export interface Judged {
  readonly verdicts: readonly Verdict[];
  readonly findings: readonly Finding[];
}

function releaseBars(batch: Batch, change: StateChange, { verdicts, findings }: Judged): StateBar[] {
  const bars: StateBar[] = [];
  if (batch.product.batchNo.trim() === '') bars.push({ id: 'no-batch-number' });
  const maker = batch.signOffs.find(({ role }) => role === 'made')?.name ?? '';
  if (change.second.trim() === '') bars.push({ id: 'no-second-person' });
  else if (samePerson(change.by, change.second)) bars.push({ id: 'second-is-the-first' });
  else if (samePerson(maker, change.second)) bars.push({ id: 'second-made-it' });
  if (verdicts.length === 0) bars.push({ id: 'nothing-judged' });
  for (const { subject } of unconfirmedRuleSets(batch)) bars.push({ id: 'rule-set-unconfirmed', subject });
  for (const verdict of verdicts) if (verdict.state !== 'pass') bars.push({ id: 'verdict', verdict });
  // What the record says of itself is settled by the release, or stands above already.
  for (const finding of findings)
    if (finding.severity === 'stop' && finding.stage !== 'record') bars.push({ id: 'stop', finding });
  for (const [index, { what, decision }] of batch.deviations.entries())
    if (what.trim() !== '' && decision !== 'release' && decision !== 'reheat')
      bars.push({ id: 'deviation-open', number: index + 1 });
  return bars;
}

/**
 * Brings a batch into another state. A release needs two persons, the second not the one who made it, and is refused
 * while any verdict is fail or cannot tell, while any stop stands, while nothing at all was judged, while nobody has
 * confirmed a rule set that the settings put in, or while a deviation waits for its decision. Holding and discarding are never refused for want of a figure: they need a name
 * and a reason.
 *
 * @param change the step as the person asks for it
 * @param judged verdicts and findings of the batch as it stands now, all of them
 * @returns the batch with the step added, or every reason against it
 */
export function changeState(
  batch: Batch,
  change: StateChange,
  judged: Judged,
): { ok: true; batch: Batch } | { ok: false; bars: readonly StateBar[] } {
  const bars: StateBar[] = [];
  if (!nextStates(batch).includes(change.state)) bars.push({ id: 'no-such-step' });
  if (change.by.trim() === '') bars.push({ id: 'nobody-named' });
  const wantsReason =
    change.state === 'held' || change.state === 'discarded' || stateOf(batch).state === 'held';
  if (wantsReason && change.why.trim() === '') bars.push({ id: 'no-reason' });
  if (change.state === 'released') bars.push(...releaseBars(batch, change, judged));
  return bars.length > 0
    ? { ok: false, bars }
    : { ok: true, batch: { ...batch, lifecycle: [...batch.lifecycle, change] } };
}

import { unitLabel } from '../quantities/index.ts';
import { checksum } from './checksum.ts';
import { isBranch, isEntry, rowKey } from './entry-shape.ts';
import type { MergeConflict } from './merge.ts';
import type { Batch, HistoryEntry } from './record.ts';
import { stateOf } from './state.ts';

/** What changed in one field. */
export type Change = Pick<HistoryEntry, 'what' | 'row' | 'from' | 'to'>;

/**
 * Keys whose fields are measured, weighed or signed: whatever stands under them is followed. The last row are lists
 * and slices that hold nothing else.
 */
const FOLLOWED = new Set([
  ...['actual', 'actualFills', 'actualLinks', 'saltActual', 'curingSaltActual', 'sugarActual', 'now'],
  ...['afterInjection', 'afterBrine', 'finished', 'lot', 'batchNo', 'useBy', 'ph', 'waterActivity'],
  ...[
    'ice',
    'boil',
    'offset',
    'error',
    'checkedOn',
    'startedAt',
    'endedAt',
    'startedOn',
    'weighedBy',
    'checkedBy',
    'madeBy',
  ],
  ...['readings', 'trials', 'signOffs', 'deviations', 'dispatches', 'lifecycle'],
]);
/** Planned weights and doses: followed once the work has begun, for until then they are a draft. */
const FOLLOWED_IN_WORK = new Set([
  'amount',
  'nitrite',
  'nitrate',
  'nitriteTarget',
  'cookLimitId',
  'coolRuleSetId',
]);
/** Kept by themselves or of no weight. */
const LEFT_OUT = new Set(['history', 'issued', 'updatedAt', 'createdAt', 'schema', 'id', 'enteredAt']);

/** A signature: who signed is what counts, the hour of each keystroke is not. */
const isSignature = (value: unknown): value is { name: string } =>
  isBranch(value) && typeof value.role === 'string' && typeof value.name === 'string';

/** A value as a person reads it. */
function textOf(value: unknown): string {
  if (isSignature(value)) return value.name.trim();
  if (isEntry(value))
    return value.text.trim() === '' ? '' : `${value.text.trim()} ${unitLabel(value.unit)}`.trim();
  if (Array.isArray(value)) return value.map(textOf).filter(Boolean).join(', ');
  if (isBranch(value))
    return Object.entries(value)
      .filter(([key]) => !LEFT_OUT.has(key))
      .map(([, part]) => textOf(part))
      .filter(Boolean)
      .join(' · ');
  return value === null || value === undefined ? '' : String(value);
}

/** What a row is called: its name, or the clock time it was read at. */
function nameOf(row: unknown): string {
  if (!isBranch(row)) return '';
  if (isSignature(row)) return '';
  if (typeof row.name === 'string') return row.name.trim();
  return typeof row.at === 'string' ? (/T(\d\d:\d\d)/.exec(row.at)?.[1] ?? '') : '';
}

const isLeaf = (value: unknown) =>
  isEntry(value) || isSignature(value) || !(isBranch(value) || Array.isArray(value));

/** Rows of a list by key, or by place where they have none. */
function rowsOf(list: readonly unknown[]): Map<string, unknown> {
  return new Map(list.map((row, index) => [rowKey(row) ?? String(index + 1), row]));
}

interface Walk {
  readonly followed: boolean;
  readonly path: string;
  readonly names: readonly string[];
}

/**
 * What changed between two states of a record among its readings, weights, lots, dates, decisions and signatures.
 * A reading that was added is none: it carries the time it was typed in itself. One that was changed, left out or
 * taken away is.
 */
export function changesBetween(before: Batch, after: Batch): Change[] {
  const inWork = stateOf(after).state !== 'planned';
  const changes: Change[] = [];
  const say = ({ path, names }: Walk, from: string, to: string) => {
    if (from !== to) changes.push({ what: path, row: names.filter(Boolean).join(', '), from, to });
  };
  const below = (walk: Walk, key: string, row?: unknown): Walk => ({
    followed: walk.followed || FOLLOWED.has(key) || (inWork && FOLLOWED_IN_WORK.has(key)),
    path: walk.path === '' ? key : `${walk.path}.${key}`,
    names: row === undefined ? walk.names : [...walk.names, nameOf(row)],
  });
  const compare = (walk: Walk, key: string, from: unknown, to: unknown): void => {
    if (from === to) return;
    if (isLeaf(from) && isLeaf(to)) {
      if (walk.followed) say(walk, textOf(from), textOf(to));
    } else if (Array.isArray(from) || Array.isArray(to)) {
      lists(walk, key, Array.isArray(from) ? from : [], Array.isArray(to) ? to : []);
    } else if (isBranch(from) && isBranch(to)) {
      for (const part of new Set([...Object.keys(from), ...Object.keys(to)]))
        if (!LEFT_OUT.has(part)) compare(below(walk, part), part, from[part], to[part]);
    } else if (walk.followed && from !== undefined && to !== undefined) {
      say(walk, textOf(from), textOf(to));
    } else {
      // A slice begun or dropped: what is followed in it stands against nothing.
      const whole = isBranch(to) ? to : from;
      if (!isBranch(whole)) return;
      for (const part of Object.keys(whole))
        if (!LEFT_OUT.has(part))
          compare(
            below(walk, part),
            part,
            isBranch(from) ? from[part] : undefined,
            isBranch(to) ? to[part] : undefined,
          );
    }
  };
  const lists = (walk: Walk, key: string, from: readonly unknown[], to: readonly unknown[]): void => {
    const old = rowsOf(from);
    const now = rowsOf(to);
    for (const name of new Set([...old.keys(), ...now.keys()])) {
      const was = old.get(name);
      const is = now.get(name);
      if (was === undefined && key === 'readings') continue;
      const row = below(walk, name, is ?? was);
      if (was !== undefined && is !== undefined) compare(row, name, was, is);
      else if (row.followed) say(row, textOf(was), textOf(is));
      else compare(row, name, was, is);
    }
  };
  compare({ followed: false, path: '', names: [] }, '', before, after);
  return changes;
}

/** A field that two hands changed differently, as an entry: the value that stands took the place of the other. */
export function changeOfConflict({ path, ours, theirs }: MergeConflict): Change {
  return { what: path, row: '', from: textOf(theirs), to: textOf(ours) };
}

const sealed = (before: string, { at, by, what, row, from, to }: Omit<HistoryEntry, 'sum'>): string =>
  checksum(JSON.stringify([before, at, by, what, row, from, to]));

/**
 * The history with changes added to its end, each with the running checksum.
 *
 * @param at ISO 8601 with offset
 * @param by who stood at the bench, '' where nobody said
 */
export function withChanges(
  batchId: string,
  history: readonly HistoryEntry[],
  changes: readonly Change[],
  at: string,
  by: string,
): HistoryEntry[] {
  const longer = [...history];
  for (const change of changes) {
    const entry = { at, by, ...change };
    longer.push({ ...entry, sum: sealed(longer.at(-1)?.sum ?? batchId, entry) });
  }
  return longer;
}

/**
 * Whether a history still reads as it was written. It shows a slip or a careless hand: whoever rewrites the sums as
 * well is not found out.
 *
 * @returns index of the first entry that does not fit those before it, or null
 */
export function historyFault(batchId: string, history: readonly HistoryEntry[]): number | null {
  let before = batchId;
  for (const [index, entry] of history.entries()) {
    if (sealed(before, entry) !== entry.sum) return index;
    before = entry.sum;
  }
  return null;
}

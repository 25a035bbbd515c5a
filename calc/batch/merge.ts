import { isBranch, isEntry, rowKey } from './entry-shape.ts';
import type { Batch } from './record.ts';

/** One field that two hands changed differently. Both values are kept. */
export interface MergeConflict {
  /** Path of the field; rows by id. */
  readonly path: string;
  /** Undefined: that side took the row away. */
  readonly ours: unknown;
  readonly theirs: unknown;
}

/** Lists whose rows have no id and only grow. */
const GROWING = new Set(['history']);
const MOMENT_OF_EDIT = 'updatedAt';

function same(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (Array.isArray(a) && Array.isArray(b))
    return a.length === b.length && a.every((part, index) => same(part, b[index]));
  if (!isBranch(a) || !isBranch(b)) return false;
  const keys = Object.keys(a);
  return keys.length === Object.keys(b).length && keys.every((key) => key in b && same(a[key], b[key]));
}

const byKey = (list: readonly unknown[]) => new Map(list.map((row) => [rowKey(row) ?? '', row]));
const keysOf = (list: readonly unknown[]) => list.map((row) => rowKey(row) ?? '');
const hasRows = (list: readonly unknown[]) => list.every((row) => rowKey(row) !== null);

/** The order of a merged list: of the side that moved rows, with the other's new rows after their neighbours. */
function orderOf(base: readonly string[], ours: readonly string[], theirs: readonly string[]): string[] {
  const kept = (keys: readonly string[]) => keys.filter((key) => base.includes(key));
  const oursMoved = kept(ours).join('\n') !== base.filter((key) => ours.includes(key)).join('\n');
  const [lead, other] = oursMoved ? [ours, theirs] : [theirs, ours];
  const order = [...lead];
  for (const [index, key] of other.entries()) {
    if (order.includes(key)) continue;
    const neighbour = other.slice(0, index).findLast((before) => order.includes(before));
    order.splice(neighbour === undefined ? 0 : order.indexOf(neighbour) + 1, 0, key);
  }
  return order;
}

/**
 * Puts two records together that grew from one: each field takes the value of the side that changed it. Where both
 * changed one field differently, ours stands and theirs is told. Rows added on either side are all kept; a row taken
 * away on one side and changed on the other stays, and is told.
 *
 * @param base what both started from
 * @returns the merged record and every field with two values, for a person to decide
 */
export function mergeBatches(
  base: Batch,
  ours: Batch,
  theirs: Batch,
): { batch: Batch; conflicts: readonly MergeConflict[] } {
  const conflicts: MergeConflict[] = [];

  const lists = (
    path: string,
    was: readonly unknown[],
    mine: readonly unknown[],
    other: readonly unknown[],
  ) => {
    const [old, left, right] = [byKey(was), byKey(mine), byKey(other)];
    const merged: unknown[] = [];
    for (const key of orderOf(keysOf(was), keysOf(mine), keysOf(other))) {
      const before = old.get(key);
      const [a, b] = [left.get(key), right.get(key)];
      const here = `${path}.${key}`;
      if (a !== undefined && b !== undefined) merged.push(merge(here, before ?? a, a, b));
      else if (before === undefined) merged.push(a ?? b);
      else if (!same(a ?? b, before)) {
        conflicts.push({ path: here, ours: a, theirs: b });
        merged.push(a ?? b);
      }
    }
    return merged;
  };

  const merge = (path: string, was: unknown, mine: unknown, other: unknown): unknown => {
    if (mine === other || same(mine, other)) return mine;
    if (same(was, other)) return mine;
    if (same(was, mine)) return other;
    if (Array.isArray(mine) && Array.isArray(other)) {
      const before = Array.isArray(was) ? was : [];
      if (hasRows(before) && hasRows(mine) && hasRows(other)) return lists(path, before, mine, other);
    } else if (isBranch(mine) && isBranch(other) && !isEntry(mine) && !isEntry(other)) {
      const before = isBranch(was) ? was : {};
      const result: Record<string, unknown> = {};
      for (const key of new Set([...Object.keys(other), ...Object.keys(mine)])) {
        const here = path === '' ? key : `${path}.${key}`;
        const value =
          path === '' && key === MOMENT_OF_EDIT
            ? later(mine[key], other[key])
            : path === '' && GROWING.has(key)
              ? grown(before[key], mine[key], other[key])
              : merge(here, before[key], mine[key], other[key]);
        if (value !== undefined) result[key] = value;
      }
      return result;
    }
    conflicts.push({ path, ours: mine, theirs: other });
    return mine;
  };

  return { batch: merge('', base, ours, theirs) as Batch, conflicts };
}

/** The later of two moments. */
function later(mine: unknown, other: unknown): unknown {
  return Date.parse(String(other)) > Date.parse(String(mine)) ? other : mine;
}

/** Theirs with what ours added after the common start. Checksums are made anew by whoever writes it. */
function grown(was: unknown, mine: unknown, other: unknown): unknown {
  if (!Array.isArray(mine) || !Array.isArray(other)) return mine;
  const common = Array.isArray(was) ? was.length : 0;
  return [...other, ...mine.slice(common)];
}

import { newBatch, summaryOf } from '@larderwright/calc/batch';
import { describe, expect, test } from 'vitest';
import { arranged } from '../../../worksheets/batch-library/arrange.ts';
import type { Shelved } from '../../../worksheets/state/database.ts';
import { STATE_WORDS } from '../../../worksheets/words/states.ts';

function shelved(name: string, with_: Partial<Shelved> = {}): Shelved {
  const batch = newBatch({ id: name, at: '2026-11-01T08:00:00+00:00', zone: 'UTC' });
  batch.product.name = name;
  return { ...summaryOf(batch, STATE_WORDS), rev: 1, archivedAt: null, ...with_ };
}
const names = (list: readonly Shelved[]) => list.map(({ name }) => name);
const ALL = { text: '', which: 'in-use', order: 'changed' } as const;

const hare = shelved('Hare', { updatedAt: '2026-11-03T08:00:00+00:00', batchNo: 'T-9', state: 'released' });
const trout = shelved('Trout', { updatedAt: '2026-11-04T08:00:00+01:00', batchNo: 'T-10', state: 'held' });
const ham = shelved('Ham', { updatedAt: '2026-11-04T07:30:00+00:00', day: '2026-11-09', state: 'planned' });
const old = shelved('Old', { archivedAt: '2026-11-05T08:00:00+00:00' });
const batches = [hare, trout, ham, old];

describe('the list of batches', () => {
  test('has the last changed first, by the instant and not by the text of it', () => {
    expect(names(arranged(batches, ALL))).toEqual(['Ham', 'Trout', 'Hare']);
  });

  test('shows those in use, those archived, or all', () => {
    expect(names(arranged(batches, { ...ALL, which: 'archived' }))).toEqual(['Old']);
    expect(arranged(batches, { ...ALL, which: 'all' })).toHaveLength(4);
  });

  test('counts in numbers, so that 10 stands above 9', () => {
    expect(names(arranged([hare, trout], { ...ALL, order: 'number' }))).toEqual(['Trout', 'Hare']);
  });

  test('has what is held first, by state, and the newest day first, by day', () => {
    expect(names(arranged(batches, { ...ALL, order: 'state' }))).toEqual(['Trout', 'Ham', 'Hare']);
    expect(names(arranged(batches, { ...ALL, order: 'day' })).at(0)).toBe('Ham');
    expect(names(arranged(batches, { ...ALL, order: 'name' }))).toEqual(['Ham', 'Hare', 'Trout']);
  });

  test('leaves the list it was given as it was', () => {
    const before = [...batches];
    arranged(batches, { ...ALL, order: 'name' });
    expect(batches).toEqual(before);
  });
});

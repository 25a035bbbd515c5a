import { newLine } from '@larderwright/calc/batch';
import { beforeEach, describe, expect, test } from 'vitest';
import { $removed, addRow, moveRow, putBack, removeRow } from '../../../worksheets/state/rows.ts';
import { $batch, $life, emptyBatch } from '../../../worksheets/state/store.ts';

const LIST = 'formula.lines';
const ids = () => $batch.get().formula.lines.map((line) => line.id);

beforeEach(() => {
  $batch.set(emptyBatch);
  $life.set('blank');
  $removed.set(null);
  for (const id of ['a', 'b', 'c']) addRow(LIST, { ...newLine(id, 'lean'), name: id });
});

describe('rows of a list', () => {
  test('the first row added to an empty page begins a record of its own', () => {
    expect($batch.get().id).not.toBe(emptyBatch.id);
    expect($life.get()).toBe('open');
    expect(emptyBatch.formula.lines).toEqual([]);
  });

  test('move up and down by one place, and stay put at either end', () => {
    moveRow(LIST, 'c', -1);
    expect(ids()).toEqual(['a', 'c', 'b']);
    moveRow(LIST, 'a', 1);
    expect(ids()).toEqual(['c', 'a', 'b']);
    const before = $batch.get();
    moveRow(LIST, 'c', -1);
    moveRow(LIST, 'b', 1);
    moveRow(LIST, 'nobody', 1);
    expect($batch.get()).toBe(before);
  });

  test('a removed row comes back whole, in its old place', () => {
    const row = $batch.get().formula.lines[1];
    removeRow(LIST, 'b', 'Pork liver');
    expect(ids()).toEqual(['a', 'c']);
    expect($removed.get()?.label).toBe('Pork liver');
    putBack();
    expect(ids()).toEqual(['a', 'b', 'c']);
    expect($batch.get().formula.lines[1]).toEqual(row);
    expect($removed.get()).toBeNull();
  });

  test('comes back at the end when the list has become shorter meanwhile', () => {
    removeRow(LIST, 'c', 'c');
    const removed = $removed.get();
    removeRow(LIST, 'a', 'a');
    $removed.set(removed);
    putBack();
    expect(ids()).toEqual(['b', 'c']);
  });

  test('stands only once when the batch was set back meanwhile', () => {
    const whole = $batch.get();
    removeRow(LIST, 'b', 'b');
    $batch.set(whole);
    putBack();
    expect(ids()).toEqual(['a', 'b', 'c']);
    expect($removed.get()).toBeNull();
  });

  test('is never put into another batch', () => {
    removeRow(LIST, 'b', 'b');
    $batch.set({ ...$batch.get(), id: 'another' });
    putBack();
    expect(ids()).toEqual(['a', 'c']);
  });

  test('removing a row that is gone already changes nothing', () => {
    const before = $batch.get();
    removeRow(LIST, 'nobody', 'nobody');
    expect($batch.get()).toBe(before);
    expect($removed.get()).toBeNull();
  });
});

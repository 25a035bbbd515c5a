import { newBatch } from '@larderwright/calc/batch';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { addFormulaLine } from '../../../worksheets/state/lines.ts';
import { removeRow } from '../../../worksheets/state/rows.ts';
import { markFromDevice } from '../../../worksheets/state/shown.ts';
import { $batch, $life, editAt } from '../../../worksheets/state/store.ts';
import { $steps, redo, undo, watchSteps } from '../../../worksheets/state/undo.ts';

vi.stubGlobal('addEventListener', () => {});

let count = 0;
beforeEach(() => {
  vi.useFakeTimers();
  watchSteps();
  count += 1;
  const batch = newBatch({ id: `u${count}`, at: '', zone: 'UTC' });
  $batch.set({ ...batch, id: `before-${count}` });
  $batch.set(batch);
  $life.set('open');
});
const wait = () => vi.advanceTimersByTime(5_000);
const typed = (path: string, text: string) => {
  for (let length = 1; length <= text.length; length += 1) editAt(path, text.slice(0, length));
};

describe('undo', () => {
  test('takes typing in one field back as one step', () => {
    typed('product.name', 'Hare');
    expect($steps.get()).toEqual({ undo: 1, redo: 0 });
    undo();
    expect($batch.get().product.name).toBe('');
    redo();
    expect($batch.get().product.name).toBe('Hare');
  });

  test('takes another field, or the same after a pause, as another step', () => {
    typed('product.name', 'Hare');
    typed('product.kitchen', 'T');
    wait();
    typed('product.kitchen', 'TK');
    expect($steps.get().undo).toBe(3);
    undo();
    expect($batch.get().product).toMatchObject({ name: 'Hare', kitchen: 'T' });
    undo();
    undo();
    expect($batch.get().product).toMatchObject({ name: '', kitchen: '' });
    undo();
    expect($steps.get()).toEqual({ undo: 0, redo: 3 });
  });

  test('puts a removed row back where it stood, with what was in it', () => {
    const [first, second] = [addFormulaLine('lean'), addFormulaLine('fat')];
    wait();
    editAt(`formula.lines.${first}.name`, 'Shoulder');
    removeRow('formula.lines', first, 'Shoulder');
    undo();
    expect($batch.get().formula.lines.map(({ id, name }) => [id, name])).toEqual([
      [first, 'Shoulder'],
      [second, ''],
    ]);
  });

  test('leaves alone what another tab changed meanwhile', () => {
    typed('product.name', 'Hare');
    const theirs = { ...$batch.get(), notes: 'From the other tab' };
    markFromDevice(theirs);
    $batch.set(theirs);
    expect($steps.get().undo).toBe(1);
    undo();
    expect($batch.get()).toMatchObject({ product: { name: '' }, notes: 'From the other tab' });
  });

  test('never takes back a state, the history or what was issued', () => {
    const change = { id: 's', state: 'held', at: '', by: 'JK', second: '', why: 'x' } as const;
    $batch.set({ ...$batch.get(), lifecycle: [change], notes: 'x' });
    undo();
    expect($batch.get()).toMatchObject({ lifecycle: [change], notes: '' });
  });

  test('forgets redo when something else is typed, and everything with another batch', () => {
    typed('product.name', 'Hare');
    undo();
    typed('notes', 'n');
    expect($steps.get()).toEqual({ undo: 1, redo: 0 });
    $batch.set(newBatch({ id: 'another', at: '', zone: 'UTC' }));
    expect($steps.get()).toEqual({ undo: 0, redo: 0 });
  });
});

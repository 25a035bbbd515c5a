import 'fake-indexeddb/auto';
import { type Batch, historyFault, newBatch, newLine } from '@larderwright/calc/batch';
import { enteredEntry } from '@larderwright/calc/quantities';
import { beforeEach, describe, expect, test } from 'vitest';
import { $conflicts, keepOurs, takeTheirs } from '../../../worksheets/state/conflicts.ts';
import { database } from '../../../worksheets/state/database.ts';
import { keepAfterAll, keepEdit, opened } from '../../../worksheets/state/keeper.ts';
import { deleteBatch, openShelf, putBackBatch } from '../../../worksheets/state/shelf.ts';
import { addRecords, rawBatch, rawWithRev, saveBatch } from '../../../worksheets/state/storage.ts';
import { $batch, $life, $notice, editAt } from '../../../worksheets/state/store.ts';

const AT = '2026-11-27T10:00:00+00:00';
let count = 0;

/** A batch as it lies on the device and on the page, newly opened. */
async function onTheBench(): Promise<Batch> {
  count += 1;
  const batch = newBatch({ id: `b${count}`, at: AT, zone: 'UTC' });
  batch.formula.lines.push({
    ...newLine('liver', 'liver'),
    name: 'Pork liver',
    amount: enteredEntry('300', 'g'),
  });
  await saveBatch(batch);
  opened(batch, 1);
  $batch.set(batch);
  $life.set('open');
  return batch;
}

/** What another tab does: it read the record, changes it and writes it. */
async function elsewhere(id: string, change: (batch: Batch) => void): Promise<void> {
  const theirs = structuredClone((await rawBatch(id)) as Batch);
  change(theirs);
  const db = await database();
  const tx = db.transaction(['batches', 'summaries'], 'readwrite');
  const shelved = await tx.objectStore('summaries').get(id);
  if (!shelved) throw new Error('the other tab knows the record');
  await tx.objectStore('batches').put(theirs);
  await tx.objectStore('summaries').put({ ...shelved, rev: shelved.rev + 1 });
  await tx.done;
}

const kept = async (id: string) => (await rawBatch(id)) as Batch;
const keep = () => keepEdit($batch.get());
const actual = ({ formula }: Batch) => formula.lines[0]?.actual.text;

beforeEach(() => {
  $notice.set(null);
  $conflicts.set([]);
});

describe('an edit that is kept', () => {
  test('is on the device with its summary, one write on', async () => {
    const { id } = await onTheBench();
    editAt('product.name', 'Hare terrine');
    await keep();
    expect((await kept(id)).product.name).toBe('Hare terrine');
    expect((await rawWithRev(id))?.rev).toBe(2);
    const { batches } = await openShelf();
    expect(batches.find((batch) => batch.id === id)).toMatchObject({ name: 'Hare terrine', rev: 2 });
  });

  test('goes into the history as one entry a field, however often the burst was written', async () => {
    const { id } = await onTheBench();
    for (const text of ['3', '30', '302']) {
      editAt('formula.lines.liver.actual', enteredEntry(text, 'g'));
      await keep();
    }
    const { history } = await kept(id);
    expect(history.map(({ row, from, to }) => [row, from, to])).toEqual([['Pork liver', '', '302 g']]);
    expect(historyFault(id, history)).toBeNull();
  });
});

describe('a record that two tabs write', () => {
  test('holds the edits of both', async () => {
    const { id } = await onTheBench();
    await elsewhere(id, (theirs) => {
      theirs.product.kitchen = 'Tarnwick Training Kitchen';
    });
    editAt('formula.lines.liver.actual', enteredEntry('302', 'g'));
    await keep();
    const batch = await kept(id);
    expect(batch.product.kitchen).toBe('Tarnwick Training Kitchen');
    expect(actual(batch)).toBe('302');
    expect($batch.get().product.kitchen).toBe('Tarnwick Training Kitchen');
    expect($conflicts.get()).toEqual([]);
  });

  test('keeps both values of a field that both changed: one in it, one told and in the history', async () => {
    const { id } = await onTheBench();
    await elsewhere(id, (theirs) => {
      const [line] = theirs.formula.lines;
      if (line) line.actual = enteredEntry('203', 'g');
    });
    editAt('formula.lines.liver.actual', enteredEntry('302', 'g'));
    await keep();
    expect(actual(await kept(id))).toBe('302');
    expect($conflicts.get()).toMatchObject([
      { path: 'formula.lines.liver.actual', ours: { text: '302' }, theirs: { text: '203' } },
    ]);
    expect((await kept(id)).history.at(-1)).toMatchObject({ from: '203 g', to: '302 g' });
    const [conflict] = $conflicts.get();
    if (conflict) takeTheirs(conflict);
    expect(actual($batch.get())).toBe('203');
    expect($conflicts.get()).toEqual([]);
  });

  test('lets a person say that the value on screen is right', async () => {
    const { id } = await onTheBench();
    await elsewhere(id, (theirs) => {
      theirs.product.name = 'Theirs';
    });
    editAt('product.name', 'Ours');
    await keep();
    editAt('notes', 'Typed on');
    await keep();
    // A name is no weight, but two values of anything are kept.
    expect((await kept(id)).history).toMatchObject([{ what: 'product.name', from: 'Theirs', to: 'Ours' }]);
    const [conflict] = $conflicts.get();
    if (conflict) keepOurs(conflict);
    expect($conflicts.get()).toEqual([]);
    expect($batch.get().product.name).toBe('Ours');
  });

  test('is not written over when the other one deleted it, and can be kept after all', async () => {
    const { id } = await onTheBench();
    await deleteBatch(id);
    editAt('product.name', 'Still here');
    await keep();
    expect(await rawBatch(id)).toBeUndefined();
    expect($notice.get()?.id).toBe('batch-deleted');
    await keepAfterAll();
    expect((await kept(id)).product.name).toBe('Still here');
    expect($notice.get()).toBeNull();
  });
});

describe('a device that was cleared', () => {
  test('takes the batch on screen again and says so', async () => {
    const { id } = await onTheBench();
    const db = await database();
    await Promise.all([db.clear('batches'), db.clear('summaries'), db.clear('desk')]);
    editAt('product.name', 'Kept on screen');
    await keep();
    expect((await kept(id)).product.name).toBe('Kept on screen');
    expect($notice.get()?.id).toBe('storage-cleared');
  });
});

describe('the shelf', () => {
  test('gives a summary to a record that was written without one, and sets a damaged one aside', async () => {
    const db = await database();
    const bare = newBatch({ id: 'bare', at: AT, zone: 'UTC' });
    await db.put('batches', { ...bare, product: { ...bare.product, name: 'Bare' } });
    await db.put('batches', { id: 'broken', schema: 2, product: { name: 'Broken' } } as unknown as Batch);
    const { batches, aside } = await openShelf();
    expect(batches.find(({ id }) => id === 'bare')).toMatchObject({ name: 'Bare', state: 'planned' });
    expect(aside).toMatchObject([{ id: 'broken', raw: { product: { name: 'Broken' } } }]);
    expect(await rawBatch('broken')).toBeUndefined();
  });

  test('reads a record of version 1 and leaves it as it lies', async () => {
    const db = await database();
    const {
      lifecycle: _,
      dispatches: __,
      history: ___,
      ...old
    } = newBatch({ id: 'old', at: AT, zone: 'UTC' });
    await db.put('batches', { ...old, schema: 1 } as unknown as Batch);
    const { batches } = await openShelf();
    expect(batches.some(({ id }) => id === 'old')).toBe(true);
    expect(await rawBatch('old')).toMatchObject({ schema: 1 });
  });

  test('gives a deleted batch back as it was', async () => {
    const { id } = await onTheBench();
    const before = await kept(id);
    await deleteBatch(id);
    expect((await openShelf()).bin.map((binned) => binned.id)).toContain(id);
    await putBackBatch(id);
    const { batches, bin } = await openShelf();
    expect(await kept(id)).toEqual(before);
    expect(batches.some((batch) => batch.id === id)).toBe(true);
    expect(bin.some((binned) => binned.id === id)).toBe(false);
  });

  test('takes records in beside those it has, all or none', async () => {
    const one = newBatch({ id: 'taken-in', at: AT, zone: 'UTC' });
    await addRecords([one]);
    const other = newBatch({ id: 'not-taken-in', at: AT, zone: 'UTC' });
    await expect(addRecords([other, one])).rejects.toThrow();
    expect(await rawBatch('not-taken-in')).toBeUndefined();
  });
});

import { beforeEach, describe, expect, test, vi } from 'vitest';

// A derived value wakes only where there is a page.
vi.stubGlobal('document', {});
const { derive } = await import('../../../worksheets/state/derived.ts');
const { $batch, $life, editAt, emptyBatch } = await import('../../../worksheets/state/store.ts');

const settled = () => new Promise((done) => setTimeout(done));

beforeEach(() => {
  $batch.set(emptyBatch);
  $life.set('waking');
});

describe('a value computed from the batch', () => {
  test('is not yet there, and nothing is fetched for it, while there is no batch', async () => {
    const load = vi.fn(async () => () => 'a value');
    const $value = derive(load);
    $life.set('blank');
    await settled();
    expect($value.get()).toEqual({ state: 'not-yet' });
    expect(load).not.toHaveBeenCalled();
  });

  test('is fetched once at the first edit and follows every later one at once', async () => {
    const load = vi.fn(async () => (batch: { product: { name: string } }) => batch.product.name);
    const $value = derive(load);
    $life.set('blank');
    editAt('product.name', 'Hare');
    expect($value.get()).toEqual({ state: 'not-yet' });
    await settled();
    expect($value.get()).toEqual({ state: 'ready', value: 'Hare' });
    editAt('product.name', 'Hare terrine');
    expect($value.get()).toEqual({ state: 'ready', value: 'Hare terrine' });
    expect(load).toHaveBeenCalledTimes(1);
  });

  test('is there at the first edit of a new batch when its code is there already', async () => {
    const $value = derive(async () => (batch: { product: { name: string } }) => batch.product.name);
    editAt('product.name', 'Hare');
    await settled();
    $batch.set(emptyBatch);
    $life.set('blank');
    expect($value.get()).toEqual({ state: 'not-yet' });
    editAt('product.name', 'Pheasant');
    expect($value.get()).toEqual({ state: 'ready', value: 'Pheasant' });
  });

  test('says that it failed when its code cannot be fetched, and tries again later', async () => {
    const load = vi.fn(async (): Promise<() => string> => {
      throw new Error('no network');
    });
    const $value = derive(load);
    editAt('product.name', 'Hare');
    await settled();
    expect($value.get()).toEqual({ state: 'failed', detail: 'no network' });
    load.mockImplementation(async () => () => 'here now');
    $life.set('blank');
    $life.set('open');
    await settled();
    expect($value.get()).toEqual({ state: 'ready', value: 'here now' });
  });

  test('says that it failed when it cannot be computed, instead of keeping the old value', async () => {
    const $value = derive(async () => (batch: { product: { name: string } }) => {
      if (batch.product.name === 'bad') throw new Error('a slip of the program');
      return batch.product.name;
    });
    editAt('product.name', 'good');
    await settled();
    expect(() => editAt('product.name', 'bad')).toThrow('a slip of the program');
    expect($value.get()).toEqual({ state: 'failed', detail: 'a slip of the program' });
  });

  test('is put away when the bench is cleared', async () => {
    const $value = derive(async () => () => 'a value');
    editAt('product.name', 'Hare');
    await settled();
    $batch.set(emptyBatch);
    $life.set('blank');
    expect($value.get()).toEqual({ state: 'not-yet' });
  });
});

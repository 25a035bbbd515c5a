import { beforeEach, describe, expect, test } from 'vitest';
import { $batch, $life, asEntry, edit, editAt, emptyBatch } from '../../../worksheets/state/store.ts';

beforeEach(() => {
  $batch.set(emptyBatch);
  $life.set('blank');
});

describe('the batch on the bench', () => {
  test('an edit that changes nothing begins no record', () => {
    edit((batch) => batch);
    expect($batch.get()).toBe(emptyBatch);
    expect($life.get()).toBe('blank');
  });

  test('the first edit gives the record an id, a time with its offset, and a zone', () => {
    editAt('product.name', 'Hare terrine');
    const batch = $batch.get();
    expect(batch.product.name).toBe('Hare terrine');
    expect(batch.id).not.toBe(emptyBatch.id);
    expect(batch.createdAt).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d[+-]\d\d:\d\d$/);
    expect(batch.zone).not.toBe('');
    expect($life.get()).toBe('open');
  });

  test('later edits keep the id and the day it was begun', () => {
    editAt('product.name', 'Hare terrine');
    const { id, createdAt } = $batch.get();
    editAt('notes', 'Second trial');
    expect($batch.get()).toMatchObject({ id, createdAt, notes: 'Second trial' });
  });

  test('a path to something else than a number field is an error of the program', () => {
    expect(() => asEntry('', 'product.name')).toThrow(/product.name/);
    expect(asEntry(emptyBatch.formula.saltTarget, 'formula.saltTarget').unit).toBe('%');
  });
});

import { BATCH_SCHEMA } from '@larderwright/calc/batch';
import { writeBatchFile } from '@larderwright/calc/exchange';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demos } from '../../content/demo/index.ts';
import { publishedSchema } from '../../site/lib/batch-schema.ts';
import { urls } from '../../site/lib/urls.ts';
import { anyBatch } from '../calc/exchange/any-batch.ts';

// A validator of JSON Schema that is not ours: https://json-schema.org/draft/2020-12/schema, core and validation.
const isValid = new Ajv2020().compile(publishedSchema());
const file = (batches: readonly unknown[]): unknown => ({
  ...JSON.parse(writeBatchFile([], { schemaAddress: 'x', at: '2026-11-27T10:00:00Z' })),
  batches: JSON.parse(JSON.stringify(batches)),
});

describe('the published JSON Schema', () => {
  it('carries its own address, with the version of the record in it', () => {
    expect(publishedSchema()).toMatchObject({
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      $id: urls.batchSchema(BATCH_SCHEMA),
    });
  });

  it('takes every demo and every record that the reader takes', () => {
    expect(isValid(file(Object.values(demos)))).toBe(true);
    fc.assert(
      fc.property(anyBatch, (batch) => {
        expect(isValid(file([batch]))).toBe(true);
      }),
      { numRuns: 40 },
    );
  });

  it('takes a file of all there is with the oven records of a device, and refuses a damaged one', () => {
    const oven = { name: 'Deck', at: '2026-11-20', filmFactor: 1.1, heatingFactor: 1, mediumShiftC: 0 };
    const where = { schemaAddress: 'x', at: '2026-11-27T10:00:00Z' };
    const whole = (ovens: (typeof oven)[]): unknown => JSON.parse(writeBatchFile([], where, { ovens }));
    expect(isValid(whole([oven]))).toBe(true);
    expect(isValid(whole([{ ...oven, filmFactor: -1 }]))).toBe(false);
  });

  it.each([
    ['a key nobody knows', { extra: 1 }],
    ['a number where a field is', { notes: 1 }],
    ['another version', { schema: 99 }],
    ['no id', { id: '' }],
  ])('refuses %s', (_, change) => {
    expect(isValid(file([{ ...demos['mutton-ham'], ...change }]))).toBe(false);
  });
});

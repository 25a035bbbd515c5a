import { BATCH_SCHEMA, type Batch } from '@larderwright/calc/batch';
import {
  FILE_VERSION,
  MOST_FILE_BATCHES,
  MOST_FILE_CHARACTERS,
  openBatchFile,
  readFileRecord,
  writeBatchFile,
} from '@larderwright/calc/exchange';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demos } from '../../../content/demo/index.ts';
import { anyBatch } from './any-batch.ts';

const where = { schemaAddress: '/schema/batches-1.json', at: '2026-11-27T10:00:00+01:00' };
const written = (batches: readonly Batch[]) => writeBatchFile(batches, where);
const json = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

describe('a file of batches', () => {
  it('gives back every record it was written from', () => {
    fc.assert(
      fc.property(fc.array(anyBatch, { maxLength: 3 }), (batches) => {
        const opened = openBatchFile(written(batches));
        expect(opened).toMatchObject({ ok: true, writtenAt: where.at });
        const records = opened.ok ? opened.records.map(readFileRecord) : [];
        expect(records.map((read) => read.ok && read.batch)).toEqual(json(batches));
      }),
      { numRuns: 40 },
    );
  });

  it('opens with a byte order mark, and opens a single record without a file around it', () => {
    const demo = demos['mutton-ham'] as Batch;
    expect(openBatchFile(`\uFEFF${written([demo])}`)).toMatchObject({ ok: true });
    const alone = openBatchFile(JSON.stringify(demo));
    expect(alone.ok && readFileRecord(alone.records[0])).toMatchObject({ ok: true, batch: { id: demo.id } });
  });

  it('names the published schema', () => {
    expect(JSON.parse(written([]))).toMatchObject({ $schema: where.schemaAddress });
  });
});

describe('a file that is damaged or hostile', () => {
  it.each([
    ['', { problem: 'empty' }],
    ['  \n', { problem: 'empty' }],
    ['[]', { problem: 'not-ours' }],
    ['"text"', { problem: 'not-ours' }],
    ['null', { problem: 'not-ours' }],
    ['{"batches":[]}', { problem: 'not-ours' }],
    ['{"format":"another","version":1,"batches":[]}', { problem: 'not-ours' }],
    ['{"format":"larderwright-batches","version":1}', { problem: 'damaged', path: 'batches' }],
    ['{"format":"larderwright-batches","batches":[]}', { problem: 'damaged', path: 'version' }],
    [
      `{"format":"larderwright-batches","version":${FILE_VERSION + 1},"batches":[]}`,
      { problem: 'newer-file', version: FILE_VERSION + 1 },
    ],
    ['{"__proto__":{"format":"x"}}', { problem: 'forbidden-key', path: '__proto__' }],
    ['{"a":[{"constructor":{"prototype":1}}]}', { problem: 'forbidden-key', path: 'a.0.constructor' }],
    ['{"a":\n  {"b": 1,}}', { problem: 'not-json', line: 2 }],
    ['{"a":1', { problem: 'not-json', line: 1 }],
    [`${'['.repeat(200_000)}${']'.repeat(200_000)}`, { problem: 'too-deep' }],
  ] as const)('text %# gives %o', (text, wanted) => {
    expect(openBatchFile(text)).toMatchObject({ ok: false, ...wanted });
  });

  it('leaves the prototype of every object alone', () => {
    openBatchFile('{"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}}}');
    expect({}).not.toHaveProperty('polluted');
  });

  it('is refused by its size before it is parsed, and by the number of its batches', () => {
    expect(openBatchFile(' '.repeat(MOST_FILE_CHARACTERS + 1))).toMatchObject({
      problem: 'too-large',
      most: MOST_FILE_CHARACTERS,
    });
    const many = JSON.stringify({
      format: 'larderwright-batches',
      version: FILE_VERSION,
      batches: Array.from({ length: MOST_FILE_BATCHES + 1 }, () => 0),
    });
    expect(openBatchFile(many)).toMatchObject({ problem: 'too-many', most: MOST_FILE_BATCHES });
  });

  it('never throws, whatever the text', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        expect(openBatchFile(text)).toMatchObject({ ok: false });
      }),
    );
  });

  it('tells a good record from its damaged neighbour, and where that is damaged', () => {
    const demo = demos['liver-parfait'] as Batch;
    const broken = { ...demo, product: { ...demo.product, portions: 12 } };
    const newer = { ...demo, schema: BATCH_SCHEMA + 1 };
    const records = [demo, broken, newer, null, 'x'].map(readFileRecord);
    expect(records).toMatchObject([
      { ok: true },
      { ok: false, problem: 'damaged', path: 'product.portions', clue: { name: demo.product.name } },
      { ok: false, problem: 'newer-version', version: BATCH_SCHEMA + 1 },
      { ok: false, problem: 'damaged' },
      { ok: false, problem: 'damaged' },
    ]);
  });
});

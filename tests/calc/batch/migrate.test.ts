import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { BATCH_SCHEMA, newBatch, readBatch } from '@larderwright/calc/batch';
import { describe, expect, it } from 'vitest';

const FOLDER = join(import.meta.dirname, '../../fixtures/records');
/** Records as earlier code wrote them, by file name: `v<version>-<which>.json`. They are never edited. */
const files = readdirSync(FOLDER);
const raw = (file: string): Record<string, unknown> =>
  JSON.parse(readFileSync(join(FOLDER, file), 'utf8')) as Record<string, unknown>;

/** What the steps since a version add; everything else must come through as it was written. */
const ADDED: Readonly<Record<number, object>> = {
  1: { lifecycle: [], dispatches: [], history: [] },
};

describe('a record of an earlier version', () => {
  it('is kept as a fixture for every version before this one', () => {
    const versions = new Set(files.map((file) => Number(/^v(\d+)-/.exec(file)?.[1])));
    expect([...versions].sort()).toEqual(Array.from({ length: BATCH_SCHEMA - 1 }, (_, index) => index + 1));
  });

  it.each(files)('%s is brought forward with all it held', (file) => {
    const old = raw(file);
    const added = Object.entries(ADDED)
      .filter(([version]) => Number(version) >= Number(old.schema))
      .map(([, part]) => part);
    expect(readBatch(old)).toEqual({
      ok: true,
      batch: { ...old, ...Object.assign({}, ...added), schema: BATCH_SCHEMA },
    });
    expect(old).toEqual(raw(file));
  });

  it('that is damaged is told apart, not mended', () => {
    const { product: _, ...old } = raw('v1-first.json');
    expect(readBatch(old)).toMatchObject({ ok: false, problem: 'damaged', path: 'product' });
    expect(readBatch({ ...raw('v1-first.json'), history: 3 })).toMatchObject({ ok: true });
  });

  it.each([0, -1, 1.5, Number.NaN])('cannot be of version %s', (schema) => {
    const batch = newBatch({ id: 'b', at: '', zone: 'UTC' });
    expect(readBatch({ ...batch, schema })).toMatchObject({ ok: false, problem: 'damaged', path: 'schema' });
  });
});

import type { Batch } from '@larderwright/calc/batch';
import { type FileRecord, readFileRecord } from '@larderwright/calc/exchange';
import { describe, expect, it } from 'vitest';
import { demos } from '../../../content/demo/index.ts';
import { compareIncoming, takenBatches } from '../../../worksheets/records-desk/incoming.ts';
import { compareOvens } from '../../../worksheets/records-desk/incoming-ovens.ts';
import { readFile } from '../../../worksheets/records-desk/read-file.ts';
import {
  fileProblemWords,
  recordProblemWords,
  shareProblemWords,
} from '../../../worksheets/words/records.ts';

const demo = demos['mutton-ham'] as Batch;
const read = (batch: unknown): FileRecord => readFileRecord(JSON.parse(JSON.stringify(batch)));
const changed = { ...demo, notes: 'changed' };
const ids = () => {
  let last = 0;
  return () => `fresh-${++last}`;
};

describe('a record brought in', () => {
  const here = new Map<string, unknown>([[demo.id, structuredClone(demo)]]);

  it('is set against what is here, key for key and whatever their order', () => {
    const reordered = Object.fromEntries(Object.entries(demo).reverse());
    const incoming = compareIncoming(
      [read(reordered), read(changed), read({ ...demo, id: 'x' }), read(1)],
      here,
    );
    expect(incoming.map(({ state, taken }) => [state, taken])).toEqual([
      ['same', false],
      ['differs', true],
      ['new', true],
      ['unreadable', false],
    ]);
  });

  it('gets an id of its own where the id is in use, so that nothing is overwritten', () => {
    const incoming = compareIncoming([read(changed), read({ ...demo, id: 'x' })], here);
    expect(takenBatches(incoming, ids()).map(({ id, notes }) => [id, notes])).toEqual([
      ['fresh-1', 'changed'],
      ['x', demo.notes],
    ]);
  });

  it('stands twice in a file: the second is taken beside the first', () => {
    const incoming = compareIncoming([read(demo), read(changed), read(demo)], new Map());
    expect(incoming.map(({ state }) => state)).toEqual(['new', 'differs', 'same']);
    expect(takenBatches(incoming, ids()).map(({ id }) => id)).toEqual([demo.id, 'fresh-1']);
  });

  it('is left out when the person says so, and one that cannot be read is never taken', () => {
    const incoming = compareIncoming([read(demo), read(null)], new Map()).map((each) => ({
      ...each,
      taken: each.state === 'unreadable',
    }));
    expect(takenBatches(incoming, ids())).toEqual([]);
  });
});

describe('reading a file', () => {
  it('refuses a giant by its size, before it is in memory', async () => {
    const giant = { size: 30_000_001, text: () => Promise.reject(new Error('it was read')) };
    expect(await readFile(giant as unknown as Blob, () => {})).toMatchObject({
      ok: false,
      problem: 'too-large',
    });
  });

  it('gives the records of a file', async () => {
    const file = { format: 'larderwright-batches', version: 1, writtenAt: 'x', batches: [demo, 5] };
    const done = await readFile(new Blob([JSON.stringify(file)]), () => {});
    expect(done.ok && done.records.map((each) => each.ok)).toEqual([true, false]);
  });
});

describe('the words for a file or a link that is refused', () => {
  it('say what is wrong, where, and what to do', () => {
    expect(fileProblemWords({ problem: 'not-json', line: 12, column: 3 })).toMatchInlineSnapshot(
      `"The file is damaged or cut short, at line 12, letter 3. Nothing was taken in. Fetch it again from where it was written."`,
    );
    expect(fileProblemWords({ problem: 'not-json', line: null, column: null })).toMatch(
      /damaged or cut short\./,
    );
    expect(fileProblemWords({ problem: 'newer-file', version: 3 })).toMatch(/newer version.*Reload/);
    expect(recordProblemWords(read({ ...demo, schema: 99 }))).toMatch(/record version 99.*Reload/);
    expect(recordProblemWords(read({ ...demo, notes: 3 }))).toMatchInlineSnapshot(
      `"Damaged: "notes" holds 3."`,
    );
    expect(shareProblemWords({ problem: 'cut-or-changed' })).toMatch(/Ask for it again/);
  });
});

describe('oven records brought in', () => {
  const oven = {
    name: 'Deck',
    at: '2026-11-20T09:00:00Z',
    filmFactor: 1.1,
    heatingFactor: 1,
    mediumShiftC: 0,
  };

  it('are set against those of the device, and against each other', () => {
    const other = { ...oven, filmFactor: 1.3 };
    const found = compareOvens([oven, other, { ...oven, name: 'Small' }, other], [oven]);
    expect(found.map(({ state, taken }) => [state, taken])).toEqual([
      ['same', false],
      ['differs', true],
      ['new', true],
      ['same', false],
    ]);
  });
});

import { openBatchFile, readDevicePart, readFileRecord, writeBatchFile } from '@larderwright/calc/exchange';
import { blankKitchen } from '@larderwright/calc/kitchen';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demos } from '../../../content/demo/index.ts';

const where = { schemaAddress: '', at: '2026-11-27T10:00:00+01:00' };
const oven = {
  name: 'Deck oven, steel pan',
  at: '2026-11-20T09:00:00+01:00',
  filmFactor: 1.12,
  heatingFactor: 0.94,
  mediumShiftC: -3,
};
const nothing = { ovens: [], kitchen: null, archived: new Map(), unreadable: 0, unknown: 0 };
const kitchen = { ...blankKitchen(), name: 'Tarnwick Training Kitchen', tempFirst: 'F' } as const;

describe('what a file of all there is holds beside the batches', () => {
  it('comes back as it was written', () => {
    const opened = openBatchFile(writeBatchFile([], where, { ovens: [oven] }));
    expect(opened.ok && readDevicePart(opened.device)).toEqual({ ...nothing, ovens: [oven] });
  });

  it('has the settings of the kitchen and which batches were put out of the way', () => {
    const archived = [{ id: 'b1', at: '2026-11-20T09:00:00+01:00' }];
    const opened = openBatchFile(writeBatchFile([], where, { kitchen, archived }));
    expect(opened.ok && readDevicePart(opened.device)).toEqual({
      ...nothing,
      kitchen: { ok: true, kitchen },
      archived: new Map([['b1', '2026-11-20T09:00:00+01:00']]),
    });
  });

  it('may be wanting, as in every older file and in that of one batch', () => {
    const text = writeBatchFile(Object.values(demos).slice(0, 1), where);
    expect(text).not.toContain('"device"');
    const opened = openBatchFile(text);
    expect(opened.ok && readDevicePart(opened.device)).toEqual(nothing);
  });

  it.each([
    ['no object', 7, { unreadable: 1 }],
    ['a list', [], { unreadable: 1 }],
    ['null', null, { unreadable: 1 }],
    ['ovens that are no list', { ovens: { length: 3 } }, { unreadable: 1 }],
    ['a key of a newer version', { ovens: [oven], clocks: [] }, { ovens: [oven], unknown: 1 }],
    ['a row without its name', { ovens: [{ ...oven, name: '' }, oven] }, { ovens: [oven], unreadable: 1 }],
    ['a name as long as a book', { ovens: [{ ...oven, name: 'x'.repeat(81) }] }, { unreadable: 1 }],
    ['a figure in words', { ovens: [{ ...oven, filmFactor: '1.1' }] }, { unreadable: 1 }],
    ['a figure of no oven', { ovens: [{ ...oven, heatingFactor: -1 }] }, { unreadable: 1 }],
    ['a further key', { ovens: [{ ...oven, html: '<b>' }] }, { unreadable: 1 }],
    [
      'settings with a key nobody knows',
      { kitchen: { ...kitchen, html: '<b>' } },
      { kitchen: { ok: false, problem: 'damaged' } },
    ],
    [
      'settings of a newer version',
      { kitchen: { version: 9 } },
      { kitchen: { ok: false, problem: 'newer-version', version: 9 } },
    ],
    [
      'a kitchen whose name is a book',
      { kitchen: { ...kitchen, name: 'x'.repeat(301) } },
      { kitchen: { ok: false, path: 'name' } },
    ],
    [
      'marks that are no marks',
      { archived: [{ id: 'b1', at: 7 }], kitchen },
      { unreadable: 1, kitchen: { ok: true } },
    ],
    ['more rows than it may', { ovens: Array(250).fill(oven) }, { unreadable: 50 }],
  ])('with %s leaves out what is damaged and counts it', (_, part, wanted) => {
    expect(readDevicePart(part)).toMatchObject(wanted);
  });

  it('never harms the batches beside it', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (device) => {
        const text = JSON.stringify({
          ...JSON.parse(writeBatchFile([], where)),
          batches: [demos['mutton-ham']],
          device,
        });
        const opened = openBatchFile(text);
        if (!opened.ok) return;
        readDevicePart(opened.device);
        expect(readFileRecord(opened.records[0])).toMatchObject({ ok: true });
      }),
      { numRuns: 100 },
    );
  });
});

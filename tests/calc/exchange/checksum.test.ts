import { type Batch, newBatch } from '@larderwright/calc/batch';
import { crc32, recordChecksum } from '@larderwright/calc/exchange';
import { newLabelSlice } from '@larderwright/calc/label';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demos } from '../../../content/demo/index.ts';

describe('crc32', () => {
  it('gives the check value of the catalogue', () => {
    // ITU-T V.42 (2002), 8.1.1.6.2, the 32-bit frame check sequence; check value over "123456789": from memory.
    expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926);
    expect(crc32(new Uint8Array())).toBe(0);
  });

  it('notices every change of one bit', () => {
    fc.assert(
      fc.property(fc.uint8Array({ minLength: 1, maxLength: 80 }), fc.nat(), fc.nat(7), (bytes, at, bit) => {
        const changed = bytes.slice();
        const place = at % bytes.length;
        changed[place] = (changed[place] ?? 0) ^ (1 << bit);
        expect(crc32(changed)).not.toBe(crc32(bytes));
      }),
    );
  });
});

describe('the checksum of a record', () => {
  const demo = demos['country-terrine'] as Batch;
  const sum = recordChecksum(demo);

  it('is seven letters and figures that are not mistaken for each other', () => {
    expect(sum).toMatch(/^[0-9A-HJKMNP-TV-Z]{7}$/);
  });

  it('does not hang on the order of keys, the clock of the last edit, or what was kept at printing', () => {
    const reordered = Object.fromEntries(Object.entries(demo).reverse()) as unknown as Batch;
    expect(recordChecksum(reordered)).toBe(sum);
    const printed = { ...demo, updatedAt: '2030-01-01T00:00:00Z', issued: [] };
    expect(recordChecksum(printed)).toBe(sum);
  });

  it('stays when a worksheet was merely opened', () => {
    const blank = newBatch({ id: 'b', at: '', zone: 'UTC' });
    expect(
      recordChecksum({
        ...blank,
        product: { ...blank.product, finished: { text: '', unit: 'kg', origin: 'default' } },
      }),
    ).toBe(recordChecksum(blank));
  });

  it.each([
    ['a weight', { ...demo, formula: { ...demo.formula, lines: demo.formula.lines.slice(1) } }],
    [
      'a lot',
      {
        ...demo,
        formula: { ...demo.formula, lines: demo.formula.lines.map((line) => ({ ...line, lot: 'X' })) },
      },
    ],
    ['a signature', { ...demo, signOffs: [{ role: 'made', name: 'Q', at: '' }] }],
    ['the label', { ...demo, label: { ...newLabelSlice(), name: 'Terrine' } }],
  ] as const)('changes with %s', (_, changed) => {
    expect(recordChecksum(changed as Batch)).not.toBe(sum);
  });
});

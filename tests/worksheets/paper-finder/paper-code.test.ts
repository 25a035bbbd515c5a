import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawCode } from '../../../worksheets/batch-sheet/draw-code.ts';
import { paperCode, readPaperCode } from '../../../worksheets/paper-finder/paper-code.ts';

describe('the code of a sheet', () => {
  it('says which record and which check, and is read back', () => {
    fc.assert(
      fc.property(
        fc.stringMatching(/^[\w-]{1,40}$/),
        fc.stringMatching(/^[0-9A-HJKMNP-TV-Z]{7}$/),
        (id, sum) => {
          expect(readPaperCode(paperCode(id, sum))).toEqual({ id, sum });
        },
      ),
    );
  });

  it.each([
    '',
    'x',
    '.1234567',
    'x.123456',
    'x.12345678',
    'x.IIIIIII',
    '%E0%A4%A.1234567',
    `${'x'.repeat(101)}.1234567`,
  ])('is not in %j', (text) => {
    expect(readPaperCode(text)).toBeNull();
  });

  it('is drawn while the whole of it is at most 120 characters, else not at all', () => {
    const base = (length: number) => `https://${'a'.repeat(length - 8 - 1 - 36 - 8)}`;
    const id = '0'.repeat(36);
    expect(drawCode(base(120), id, '1234567')?.squares).toBeGreaterThan(20);
    expect(drawCode(base(121), id, '1234567')).toBeNull();
  });
});

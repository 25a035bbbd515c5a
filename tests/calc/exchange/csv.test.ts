import { csvText, safeFileName } from '@larderwright/calc/exchange';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const point = (rows: Parameters<typeof csvText>[0]) => csvText(rows, 'point').replace('\uFEFF', '');
const comma = (rows: Parameters<typeof csvText>[0]) => csvText(rows, 'comma').replace('\uFEFF', '');

/** A reader written from the grammar of RFC 4180 section 2, to read back what was written. */
function readBack(text: string, separator: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  while (at < text.length) {
    let cell = '';
    if (text.charAt(at) === '"') {
      at += 1;
      while (text.charAt(at) !== '"' || text.charAt(at + 1) === '"') {
        cell += text.charAt(at);
        at += text.charAt(at) === '"' ? 2 : 1;
        if (at > text.length) throw new Error('a quote is not closed');
      }
      at += 1;
    } else {
      while (at < text.length && text.charAt(at) !== separator && !text.startsWith('\r\n', at)) {
        cell += text.charAt(at);
        at += 1;
      }
    }
    row.push(cell);
    if (text.startsWith('\r\n', at)) {
      rows.push(row);
      row = [];
      at += 2;
    } else if (text.charAt(at) === separator) at += 1;
    else throw new Error(`no separator at ${at}`);
  }
  return rows;
}

describe('csvText', () => {
  it('writes lines, quotes and separators as RFC 4180 section 2 says', () => {
    // RFC 4180 (2005), section 2, rules 1, 5, 6 and 7.
    expect(
      point([
        ['aaa', 'b\r\nbb', 'c"c'],
        ['a,b', 'x', ''],
      ]),
    ).toBe('aaa,"b\r\nbb","c""c"\r\n"a,b",x,\r\n');
  });

  it('keeps numbers numbers, with the decimal that was asked for', () => {
    expect(point([[12.5, -3, 0.1 + 0.2, null, 1e-7, 1e21, Number.NaN]])).toBe(
      '12.5,-3,0.3,,0.0000001,1000000000000000000000,\r\n',
    );
    expect(comma([[12.5, -3.25, 'a,b', 'a;b']])).toBe('12,5;-3,25;"a,b";"a;b"\r\n');
  });

  it.each(['=1+1', '+1+1', '-1+1', '@SUM(A1)', '\tx', '\rx', ' =1', '＝1', "=cmd|' /C calc'!A0"])(
    'a text that begins like a formula (%j) is written as text',
    (text) => {
      const [[cell]] = readBack(point([[text]]), ',') as [[string]];
      expect(cell).toBe(`'${text}`);
    },
  );

  it.each(['-3', '-3.5', '-3,5', '12'])('a typed number (%s) is not marked', (text) => {
    expect(readBack(point([[text]]), ',')).toEqual([[text]]);
  });

  it('can be read back cell by cell, and no cell begins like a formula', () => {
    const cell = fc.oneof(
      fc.string({ unit: 'grapheme' }),
      fc.constantFrom('=a', '"', '\r\n', ' ', '@', ';', '-'),
    );
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 2, maxLength: 2 }), { maxLength: 4 }), (rows) => {
        const read = readBack(comma(rows), ';');
        expect(
          read.map((row) => row.map((text) => text.replace(/^'(?=[\s\uFEFF]*[=+\-@＝＋－＠]|\s)/, ''))),
        ).toEqual(
          rows.map((row) => row.map((text) => text.replace(/^'(?=[\s\uFEFF]*[=+\-@＝＋－＠]|\s)/, ''))),
        );
        for (const text of read.flat())
          expect(/^[=+@\t\r]/.test(text) || (text.startsWith('-') && Number.isNaN(Number(text)))).toBe(false);
      }),
    );
  });
});

describe('safeFileName', () => {
  it.each([
    [['20260421-A', 'Pâté: rabbit / hare', 'formula'], '20260421-A-Pâté-rabbit-hare-formula.csv'],
    [['', '', ''], 'batch.csv'],
    [['../../etc/passwd'], 'etc-passwd.csv'],
    [['con'], 'batch-con.csv'],
    [['.htaccess'], 'htaccess.csv'],
    [['a\u202Egpj.exe'], 'a-gpj-exe.csv'],
    [['テリーヌ'], 'テリーヌ.csv'],
  ] as const)('of %j is %s', (parts, name) => {
    expect(safeFileName(parts, 'csv')).toBe(name);
  });

  it('never holds what a file system stumbles over', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: 'binary', maxLength: 200 }), { maxLength: 4 }), (parts) => {
        const name = safeFileName(parts, 'json');
        expect(name).toMatch(/^[\p{L}\p{M}\p{N}_-]+\.json$/u);
        expect(Array.from(name).length).toBeLessThanOrEqual(95);
      }),
    );
  });
});

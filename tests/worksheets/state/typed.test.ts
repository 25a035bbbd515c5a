import { newBatch, newLine, readBatch } from '@larderwright/calc/batch';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';
import { keptText, LONGEST_LINE, LONGEST_NOTE } from '../../../worksheets/state/typed.ts';

describe('what is kept of a typed text', () => {
  test.each(['', '5 kgs', '1e999', '٣', '-0', '<script>alert(1)</script>', ' 12,5 ', 'NaN', '\u0000'])(
    'all of %j, letter for letter',
    (typed) => expect(keptText(typed, LONGEST_LINE)).toBe(typed),
  );

  test('the beginning of ten million characters', () => {
    const kept = keptText('7'.repeat(10_000_000), LONGEST_LINE);
    expect(kept).toBe('7'.repeat(LONGEST_LINE));
  });

  test('never half a character at the cut', () => {
    const kept = keptText(`${'a'.repeat(LONGEST_LINE - 1)}🥓🥓`, LONGEST_LINE);
    expect(kept).toBe('a'.repeat(LONGEST_LINE - 1));
  });

  test('what is kept can always be read again from the record', () => {
    const start = newBatch({ id: 'b1', at: '2026-03-10T07:30:00+00:00', zone: 'UTC' });
    const long = keptText('9'.repeat(10_000_000), LONGEST_LINE);
    const batch = {
      ...start,
      notes: keptText('n'.repeat(10_000_000), LONGEST_NOTE),
      product: { ...start.product, name: long },
      formula: {
        ...start.formula,
        lines: [{ ...newLine('l1', 'lean'), amount: enteredEntry(long, 'g'), lot: long }],
      },
    };
    expect(readBatch(JSON.parse(JSON.stringify(batch)))).toEqual({ ok: true, batch });
  });
});

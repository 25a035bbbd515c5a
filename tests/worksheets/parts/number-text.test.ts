import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';
import { gramsText, litresText, percentText } from '../../../worksheets/parts/number-text.ts';
import { readField } from '../../../worksheets/parts/read-field.ts';

describe('numbers as they are shown', () => {
  // Rounding of weights to 1 g, 0.1 g below 100 g, 0.01 g below 10 g: house rule of this project.
  test('a weight has the digits a scale of that size shows', () => {
    expect(gramsText(1862.4)).toBe('1862\u00A0g');
    expect(gramsText(47.46)).toBe('47.5\u00A0g');
    expect(gramsText(5.376)).toBe('5.38\u00A0g');
    expect(gramsText(12_345)).toBe('12\u202F345\u00A0g');
  });

  test('a volume is in litres, a small one in millilitres', () => {
    expect(litresText(1791)).toBe('1.79\u00A0L');
    expect(litresText(60)).toBe('60\u00A0mL');
  });

  test('a small share keeps two decimals', () => {
    expect(percentText(0.0164)).toBe('1.64 %');
    expect(percentText(0.248)).toBe('24.8 %');
  });
});

describe('what a field says', () => {
  test.each(['5 kgs', '1e999', '٣', '<script>alert(1)</script>', '-3', '9'.repeat(10_000), '1,234'])(
    'of %.20j is either a problem or what was understood, never NaN',
    (text) => {
      const { problem, readBack } = readField('mass', enteredEntry(text, 'g'), {});
      expect(problem ?? readBack).toBeTruthy();
      expect(`${problem} ${readBack}`).not.toMatch(/NaN|Infinity/);
    },
  );

  test('nothing of a blank and of a plain number', () => {
    expect(readField('mass', enteredEntry('', 'g'), {})).toEqual({});
    expect(readField('mass', enteredEntry('12.5', 'g'), {}).problem).toBeUndefined();
    expect(readField('mass', enteredEntry('12.5', 'g'), {}).readBack).toBeUndefined();
  });

  test('of 12,5 that it is twelve and a half', () => {
    expect(readField('mass', enteredEntry('12,5', 'g'), {}).readBack).toMatch(/12\.5/);
  });

  test('of ounces of curing salt that grams alone will do', () => {
    const { problem } = readField('mass', enteredEntry('0.2 oz', 'g'), { gramsOnly: true });
    expect(problem).toMatch(/grams only/);
  });
});

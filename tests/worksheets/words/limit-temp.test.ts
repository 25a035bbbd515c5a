import { describe, expect, it } from 'vitest';
import { inOrder } from '../../../worksheets/words/limit-temp.ts';

const shown = (text: string, wanted: string) =>
  inOrder(text.replaceAll(' °', '\u00A0°'), wanted).replaceAll('\u00A0', ' ');

describe('a limit on both scales', () => {
  // 145 °F / 63 °C: FDA Food Code 2022, 3-401.11(A)(1), as published there.
  it('has the wanted scale in front, and the figures as they were', () => {
    expect(shown('limit 145 °F (63 °C), held', 'C')).toBe('limit 63 °C (145 °F), held');
    expect(shown('from 57 °C (135 °F) to 21 °C (70 °F)', 'F')).toBe('from 135 °F (57 °C) to 70 °F (21 °C)');
  });

  it('stays as its rule states it where nothing is wanted, or where it stands so already', () => {
    expect(shown('145 °F (63 °C)', 'rule')).toBe('145 °F (63 °C)');
    expect(shown('145 °F (63 °C)', 'F')).toBe('145 °F (63 °C)');
    expect(shown('3 °C above (see below)', 'F')).toBe('3 °C above (see below)');
  });
});

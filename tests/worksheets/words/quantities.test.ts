import {
  enteredEntry,
  entryValue,
  parseQuantity,
  type QuantityKind,
  UNITS,
  type Unit,
} from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';
import { issueWords, quantityWords, readBackWords } from '../../../worksheets/words/quantities.ts';
import { unitName } from '../../../worksheets/words/unit-names.ts';

function say(kind: QuantityKind, text: string, unit: Unit, gramsOnly = false): string {
  const parsed = parseQuantity(kind, text, unit, { gramsOnly });
  if (parsed.ok) throw new Error(`${text} was read`);
  return issueWords(parsed.issue);
}

function readBack(kind: QuantityKind, text: string, unit: Unit): string | undefined {
  const entry = enteredEntry(text, unit);
  const value = entryValue(kind, entry);
  if (value === null) throw new Error(`${text} was not read`);
  return readBackWords(kind, entry, value)?.replaceAll('\u00A0', ' ');
}

describe('the words for what cannot be read', () => {
  it('name both readings of a lone comma', () => {
    expect(say('mass', '1,234', 'g')).toBe(
      '1234 or 1.234? "1,234" can be read both ways. Write 1234 or 1.234.',
    );
  });

  it('say what the field takes, in the units a person writes', () => {
    expect(say('mass', '5 °C', 'g')).toBe(
      '"°C" does not fit this field. This field takes mg, g, kg, oz, lb.',
    );
    expect(say('temperature', '4000', 'F')).toBe(
      'More than 752 °F cannot be right here. Check the number and its unit.',
    );
  });

  it('send curing salt to the gram scale', () => {
    expect(say('mass', '1/4 oz', 'g', true)).toContain('grams only');
    expect(say('mass', '1 tsp', 'g', true)).toContain('Weigh it');
  });

  it('leave no gap in any sentence', () => {
    const params = {
      found: '5 x',
      wanted: 'g, kg',
      max: 64,
      thousands: '1234',
      decimal: '1.234',
      limit: '10',
      unit: 'g',
    };
    for (const [code, words] of Object.entries(quantityWords)) {
      const { title, body } = words(params);
      expect(`${title} ${body}`, code).not.toMatch(/undefined|NaN|null/);
      expect(title, code).toMatch(/[.?]$/);
    }
  });
});

describe('what was understood is said back', () => {
  it.each<[QuantityKind, string, Unit, string | undefined]>([
    ['mass', '12.5', 'g', undefined],
    ['mass', '12,5', 'g', 'Read as 12.5 g.'],
    ['mass', '1½ lb', 'g', 'Read as 680.389 g.'],
    ['time', '1:30', 'min', 'Read as 90 min.'],
    ['mass', '1.250', 'g', 'Read as 1.25 g. The point is read as the decimal sign.'],
    ['mass', '1.250', 'kg', 'Read as 1.25 kg. The point is read as the decimal sign.'],
    ['temperature', '−18', 'C', 'Read as −18 °C.'],
    ['mass', '1 200 g', 'g', 'Read as 1200 g.'],
  ])('%s: "%s" in %s', (kind, text, unit, expected) => {
    expect(readBack(kind, text, unit)).toBe(expected);
  });

  it('every unit has a name', () => {
    for (const unit of Object.keys(UNITS) as Unit[]) expect(unitName(unit)).not.toBe('');
  });
});

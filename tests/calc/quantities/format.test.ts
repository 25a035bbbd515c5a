import {
  compensatedSum,
  fixedText,
  formatLimitTemp,
  formatQuantity,
  type LimitSide,
  type LimitTemp,
  parseQuantity,
  plainText,
  roundTo,
  UNITS,
  type Unit,
} from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

describe('rounding is that of decimal digits on paper', () => {
  it.each([
    // Each quotient is exact on paper; binary arithmetic lands a hair under the half. Derived by hand.
    [(2.05 / 1000) * 100, 2, '0.21'],
    [1.005, 2, '1.01'],
    [8.345, 2, '8.35'],
    [1.45, 1, '1.5'],
    [2.5, 0, '3'],
    [-2.5, 0, '−3'],
    [0.1 + 0.2, 1, '0.3'],
    [62.44, 1, '62.4'],
    [0, 1, '0.0'],
    [-0.04, 1, '0.0'],
    [1e-30, 3, '0.000'],
    [1e21, 0, '1000000000000000000000'],
    [9.995, 2, '10.00'],
    [123.456, 0, '123'],
  ])('%d to %i places is %s', (value, decimals, expected) => {
    expect(fixedText(value, decimals)).toBe(expected);
  });

  it('rounds up toward plus infinity and down toward minus infinity', () => {
    expect(fixedText(62.78, 0, 'up')).toBe('63');
    expect(fixedText(62.01, 0, 'up')).toBe('63');
    expect(fixedText(4.44, 0, 'down')).toBe('4');
    expect(fixedText(-1.5, 0, 'up')).toBe('−1');
    expect(fixedText(-1.5, 0, 'down')).toBe('−2');
  });

  it('does not take the noise of binary arithmetic for a reason to round up', () => {
    expect(fixedText(0.1 * 3, 1, 'up')).toBe('0.3');
    expect(fixedText(63.000000000000014, 0, 'up')).toBe('63');
    expect(fixedText(4.999999999999999, 0, 'down')).toBe('5');
  });

  it('writes nothing for what is not finite', () => {
    expect(fixedText(Number.NaN, 1)).toBe('');
    expect(fixedText(Number.POSITIVE_INFINITY, 1)).toBe('');
    expect(roundTo(Number.NaN, 1)).toBeNaN();
  });

  it('writes small and large numbers without an exponent', () => {
    expect(plainText(1e-7)).toBe('0.0000001');
    expect(plainText(1.5e-7)).toBe('0.00000015');
    expect(plainText(1.25e21)).toBe('1250000000000000000000');
    expect(plainText(-0.5)).toBe('−0.5');
  });
});

describe('a quantity is written in the unit of the person', () => {
  it('with decimals, significant digits, unit and groups', () => {
    expect(formatQuantity('mass', 907.18474, { unit: 'lb', withUnit: true })).toBe('2\u00A0lb');
    expect(formatQuantity('fraction', 0.0164, { decimals: 2, withUnit: true })).toBe('1.64\u00A0%');
    expect(formatQuantity('mass', 3850.1, { significant: 2 })).toBe('3850');
    expect(formatQuantity('mass', 0.05376, { significant: 2 })).toBe('0.054');
    expect(formatQuantity('mass', 9.99, { significant: 2 })).toBe('10');
    expect(formatQuantity('mass', 12345.6, { decimals: 1, grouped: true })).toBe('12\u202F345.6');
    expect(formatQuantity('mass', 1234.5, { grouped: true })).toBe('1234.5');
    expect(formatQuantity('temperature', -18, { unit: 'F', decimals: 1, withUnit: true })).toBe(
      '−0.4\u00A0°F',
    );
    expect(formatQuantity('count', 44, { withUnit: true })).toBe('44');
    expect(formatQuantity('mass', Number.NaN)).toBe('');
  });

  it('refuses a unit of another kind as a programmer’s error', () => {
    expect(() => formatQuantity('mass', 5, { unit: 'C' })).toThrow(RangeError);
  });

  it('reads back to exactly the value that was read before', () => {
    const units = (Object.keys(UNITS) as Unit[]).filter((unit) => unit !== 'count');
    const digits = fc.tuple(fc.integer({ min: 0, max: 99_999 }), fc.integer({ min: 0, max: 4 }));
    fc.assert(
      fc.property(digits, fc.constantFrom(...units), fc.boolean(), ([whole, scale], unit, withUnit) => {
        const { kind } = UNITS[unit];
        const first = parseQuantity(kind, plainText(whole / 10 ** scale), unit);
        fc.pre(first.ok);
        if (!first.ok) return;
        const text = formatQuantity(kind, first.value.value, { unit, withUnit, grouped: true });
        const second = parseQuantity(kind, text, unit);
        expect(second.ok && second.value.value).toBe(first.value.value);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('a temperature limit shows both scales and never leans toward danger', () => {
  it.each<[LimitTemp, LimitSide, string]>([
    // Exact: 62.78, 68.33, 73.89, 4.44, 26.67, 21.11 °C by t/°C = (t/°F − 32)/1.8 (NIST SP 811).
    [{ value: 145, unit: 'F' }, 'minimum', '145 °F (63 °C)'],
    [{ value: 155, unit: 'F' }, 'minimum', '155 °F (69 °C)'],
    [{ value: 165, unit: 'F' }, 'minimum', '165 °F (74 °C)'],
    [{ value: 40, unit: 'F' }, 'maximum', '40 °F (4 °C)'],
    [{ value: 80, unit: 'F' }, 'maximum', '80 °F (26 °C)'],
    [{ value: 70, unit: 'F' }, 'maximum', '70 °F (21 °C)'],
    [{ value: 212, unit: 'F' }, 'minimum', '212 °F (100 °C)'],
    [{ value: 5, unit: 'C' }, 'maximum', '5 °C (41 °F)'],
    [{ value: 71, unit: 'C' }, 'minimum', '71 °C (160 °F)'],
    [{ value: 71.5, unit: 'C' }, 'minimum', '71.5 °C (161 °F)'],
    // FDA Food Code 3-401.11 prints 68 °C beside 155 °F.
    [{ value: 155, unit: 'F', published: 68 }, 'minimum', '155 °F (68 °C)'],
  ])('%o as a %s', (limit, side, expected) => {
    expect(formatLimitTemp(limit, side).text.replaceAll('\u00A0', ' ')).toBe(expected);
  });
});

describe('a sum', () => {
  it('of ten tenths is one', () => expect(compensatedSum(Array(10).fill(0.1))).toBe(1));
  it('keeps small parts beside large ones', () => expect(compensatedSum([1e16, 1, -1e16])).toBe(1));
  it('of nothing is zero', () => expect(compensatedSum([])).toBe(0));
  it('of NaN is NaN and of an infinity is one', () => {
    expect(compensatedSum([1, Number.NaN])).toBeNaN();
    expect(compensatedSum([1, Number.POSITIVE_INFINITY])).toBe(Number.POSITIVE_INFINITY);
  });
});

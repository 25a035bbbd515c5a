import {
  convert,
  fromBase,
  PHYSICAL_RANGES,
  rangeIn,
  toBase,
  UNITS,
  type Unit,
  unitsOf,
  withinRange,
} from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

describe('units convert by their exact definitions', () => {
  it.each<[number, Unit, Unit, number]>([
    // NIST SP 811 (2008), appendix B.8.
    [1, 'lb', 'g', 453.59237],
    [1, 'oz', 'g', 28.349523125],
    [16, 'oz', 'lb', 1],
    [1, 'in', 'mm', 25.4],
    [212, 'F', 'C', 100],
    [32, 'F', 'C', 0],
    [-40, 'F', 'C', -40],
    [100, 'C', 'F', 212],
    [9, 'dF', 'dC', 5],
    [1, 'dC', 'dF', 1.8],
    // SI prefixes and the definition of the hour and the day.
    [1, 'kg', 'mg', 1e6],
    [1, 'L', 'dL', 10],
    [1013.25, 'hPa', 'kPa', 101.325],
    [1.5, 'h', 'min', 90],
    [1, 'd', 'h', 24],
    [17, 'g/kg', '%', 1.7],
  ])('%d %s is in %s: %d', (value, from, to, expected) => {
    expect(convert(value, from, to)).toBe(expected);
  });

  it('a difference of 1 °F is 5/9 °C, with no offset', () => {
    expect(convert(1, 'dF', 'dC')).toBeCloseTo(5 / 9, 15);
    expect(convert(1, 'F', 'C')).toBeCloseTo(-155 / 9, 12);
  });

  it('does not convert between kinds: a programmer hears of it', () => {
    expect(() => convert(1, 'C', 'dC')).toThrow(RangeError);
    expect(() => convert(1, 'g', 'mL')).toThrow(RangeError);
  });

  it('passes NaN and infinities through', () => {
    expect(convert(Number.NaN, 'lb', 'g')).toBeNaN();
    expect(convert(Number.POSITIVE_INFINITY, 'g', 'lb')).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('there and back changes nothing', () => {
  const units = Object.keys(UNITS) as Unit[];
  const typed = fc
    .tuple(fc.integer({ min: -999_999_999, max: 999_999_999 }), fc.integer({ min: 0, max: 6 }))
    .map(([digits, scale]) => digits / 10 ** scale);

  it('for every unit and every number a person can type', () => {
    fc.assert(
      fc.property(typed, fc.constantFrom(...units), (value, unit) => {
        expect(fromBase(toBase(value, unit), unit)).toBe(value === 0 ? 0 : value);
      }),
      { numRuns: 3000 },
    );
  });

  it('and through any other unit of the kind, to 12 digits', () => {
    fc.assert(
      fc.property(typed, fc.constantFrom(...units), fc.nat(), (value, from, pick) => {
        const options = unitsOf(UNITS[from].kind);
        const to = options[pick % options.length] ?? from;
        const back = convert(convert(value, from, to), to, from);
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(value)));
      }),
    );
  });
});

describe('a range', () => {
  it('includes its ends and answers in the unit the person sees', () => {
    expect(withinRange(10, 'g', { min: 10, max: 20 }).ok).toBe(true);
    expect(withinRange(20, 'g', { min: 10, max: 20 }).ok).toBe(true);
    expect(withinRange(62, 'F', { min: 63, max: 90 })).toEqual({
      ok: false,
      issue: { code: 'below-range', params: { limit: '145.4', unit: '°F' } },
    });
    expect(withinRange(20.1, 'g', { max: 20 })).toEqual({
      ok: false,
      issue: { code: 'above-range', params: { limit: '20', unit: 'g' } },
    });
  });

  it('can be written in any unit of its kind', () => {
    expect(rangeIn('cm', 1, 60)).toEqual({ min: 10, max: 600 });
    expect(rangeIn('F', 32, 212)).toEqual({ min: 0, max: 100 });
  });

  it('never takes NaN or an infinity for inside', () => {
    for (const kind of Object.keys(PHYSICAL_RANGES) as (keyof typeof PHYSICAL_RANGES)[]) {
      const [unit] = unitsOf(kind);
      if (!unit) throw new Error(`no unit for ${kind}`);
      for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])
        expect(withinRange(bad, unit).ok).toBe(false);
    }
  });
});

import { parseQuantity, type QuantityKind, type Unit } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

function value(kind: QuantityKind, text: string, unit: Unit): number | string {
  const parsed = parseQuantity(kind, text, unit);
  return parsed.ok ? parsed.value.value : parsed.issue.code;
}

// NIST SP 811 (2008) B.8: 1 lb = 453.59237 g, 1 oz = 1/16 lb = 28.349523125 g, 1 in = 25.4 mm, t/°C = (t/°F − 32)/1.8.
const LB = 453.59237;

describe('a mass is read as a person writes it', () => {
  it.each([
    ['1 1/2 lb', 1.5 * LB],
    ['1-1/2 lb', 1.5 * LB],
    ['1½ lb', 1.5 * LB],
    ['1 ½ lb', 1.5 * LB],
    ['1 1⁄2 lb', 1.5 * LB],
    ['¾ lb', 0.75 * LB],
    ['1/2 lb', 0.5 * LB],
    ['2 lb 3 oz', 2 * LB + 3 * 28.349523125],
    ['2lb3oz', 2 * LB + 3 * 28.349523125],
    ['1 kg 250 g', 1250],
    ['0,5 kg', 500],
    ['12,5', 12.5],
    ['12.5', 12.5],
    [',5', 0.5],
    ['.5', 0.5],
    ['5.', 5],
    ['+5', 5],
    ['1 200 g', 1200],
    ['1 200', 1200],
    ['1 200,5', 1200.5],
    ["1'200.5", 1200.5],
    ['1’200', 1200],
    ['1.234,5', 1234.5],
    ['1,234.5', 1234.5],
    ['1,234,567', 1234567],
    ['0,500 kg', 500],
    ['1234,567', 1234.567],
    ['1.250 kg', 1250],
    ['5 kgs', 5000],
    ['5 lbs', 5 * LB],
    ['200 grams', 200],
    ['500 mg', 0.5],
    ['  7 g ', 7],
    ['0', 0],
    ['-0', 0],
  ])('%s', (text, expected) => {
    expect(value('mass', text, 'g')).toBeCloseTo(expected, 9);
  });
});

describe('other kinds', () => {
  it.each<[QuantityKind, string, Unit, number]>([
    ['temperature', '350 F', 'C', 176.666666666667],
    ['temperature', '350°F', 'C', 176.666666666667],
    ['temperature', '350 ° F', 'C', 176.666666666667],
    ['temperature', '350 degrees F', 'C', 176.666666666667],
    ['temperature', '145', 'F', 62.777777777778],
    ['temperature', '145°', 'F', 62.777777777778],
    ['temperature', '63º', 'C', 63],
    ['temperature', '63 ℃', 'F', 63],
    ['temperature', '−18 °C', 'C', -18],
    ['temperature', '–4 °F', 'C', -20],
    ['temperature', '-40', 'F', -40],
    ['temperature-difference', '0.9 °F', 'dC', 0.5],
    ['temperature-difference', '-0,5', 'dC', -0.5],
    ['time', '1h 30', 'min', 90],
    ['time', '1h30', 'min', 90],
    ['time', '1 h 30 min', 'min', 90],
    ['time', '1:30', 'min', 90],
    ['time', '0:01:30', 'min', 1.5],
    ['time', '90 s', 'min', 1.5],
    ['time', '3 min 30', 'min', 3.5],
    ['time', '2', 'h', 120],
    ['time', '1 1/2 hours', 'min', 90],
    ['time', '2 d', 'min', 2880],
    ['length', '5"', 'mm', 127],
    ['length', '1 1/2 in', 'mm', 38.1],
    ['length', '29 cm', 'mm', 290],
    ['volume', '1,5 L', 'mL', 1500],
    ['volume', '5 cm3', 'mL', 5],
    ['volume', '4 cl', 'mL', 40],
    ['density', '1.04 g/cm3', 'g/mL', 1.04],
    ['density', '1.04 kg/L', 'g/mL', 1.04],
    ['fraction', '1.7 %', '%', 0.017],
    ['fraction', '17 g/kg', '%', 0.017],
    ['fraction', '1,7 per cent', '%', 0.017],
    ['ppm', '156 mg/kg', 'ppm', 156],
    ['pressure', '0.7', 'kPa', 0.7],
    ['pressure', '1013 mbar', 'hPa', 101.3],
    // NIST SP 811 B.8: 1 psi = 6.894 757 kPa.
    ['pressure', '1 psi', 'kPa', 6.894757],
    ['count', '44 portions', 'count', 44],
    ['money', '12.50', 'money', 12.5],
    ['ratio', '3.6', 'ratio', 3.6],
    ['money', '12,5 cu', 'money', 12.5],
    ['money', '3 €', 'money', 3],
  ])('%s: %s read in %s', (kind, text, unit, expected) => {
    expect(value(kind, text, unit)).toBeCloseTo(expected, 6);
  });
});

describe('what cannot be read for sure is refused by name', () => {
  it.each<[QuantityKind, string, Unit, string]>([
    ['mass', '', 'g', 'empty'],
    ['mass', ' \u00A0 ', 'g', 'empty'],
    ['mass', '1,234', 'g', 'ambiguous-comma'],
    ['mass', '12,345 kg', 'g', 'ambiguous-comma'],
    ['mass', '1,234 g', 'g', 'ambiguous-comma'],
    ['mass', '1e3', 'g', 'exponent'],
    ['mass', '1e999', 'g', 'exponent'],
    ['mass', '1E-2 kg', 'g', 'exponent'],
    ['mass', '-5', 'g', 'negative'],
    ['time', '-1:30', 'min', 'negative'],
    ['mass', 'NaN', 'g', 'not-a-number'],
    ['mass', 'Infinity', 'g', 'not-a-number'],
    ['mass', '-Infinity', 'g', 'not-a-number'],
    ['mass', 'about 5', 'g', 'not-a-number'],
    ['mass', '<script>alert(1)</script>', 'g', 'not-a-number'],
    ['mass', '=1+1', 'g', 'not-a-number'],
    ['mass', '1+1', 'g', 'not-a-number'],
    ['mass', '٣', 'g', 'foreign-digits'],
    ['mass', '５', 'g', 'foreign-digits'],
    ['mass', '5 ٣', 'g', 'foreign-digits'],
    ['mass', '5-6 kg', 'g', 'number-range'],
    ['mass', '5 – 6 kg', 'g', 'number-range'],
    ['mass', '5 to 6 kg', 'g', 'number-range'],
    ['mass', '11/2 lb', 'g', 'improper-fraction'],
    ['mass', '1/0', 'g', 'zero-denominator'],
    ['mass', '1 20', 'g', 'missing-unit'],
    ['mass', '2 lbs., 3 oz', 'g', 'not-a-number'],
    ['temperature-difference', '±1', 'dC', 'not-a-number'],
    ['mass', '1234 567', 'g', 'bad-grouping'],
    ['mass', '1,5.2', 'g', 'bad-grouping'],
    ['mass', '1.2.3', 'g', 'bad-grouping'],
    ['mass', '1,23,4', 'g', 'bad-grouping'],
    ['mass', '5 °C', 'g', 'wrong-kind'],
    ['mass', '5 %', 'g', 'wrong-kind'],
    ['mass', '5 mL', 'g', 'wrong-kind'],
    ['temperature', '5 g', 'C', 'wrong-kind'],
    ['mass', '5 tsp', 'g', 'spoon-or-cup'],
    ['mass', '2 cups', 'g', 'spoon-or-cup'],
    ['mass', '5 gr', 'g', 'unknown-unit'],
    ['temperature', '300 K', 'C', 'wrong-kind'],
    ['mass', '5 stone', 'g', 'unknown-unit'],
    ['mass', '5 kg 250', 'g', 'missing-unit'],
    ['mass', '3 oz 2 lb', 'g', 'bad-compound'],
    ['mass', '3 lb 20 oz', 'g', 'bad-compound'],
    ['time', '1:75', 'min', 'bad-clock'],
    ['time', '1:2:3:4', 'min', 'bad-clock'],
    ['count', '2.5', 'count', 'not-whole'],
    ['money', '5 kg', 'money', 'wrong-kind'],
    ['money', '-1', 'money', 'negative'],
    ['fraction', '170', '%', 'above-range'],
    ['temperature', '4000', 'C', 'above-range'],
    ['temperature', '-300', 'C', 'below-range'],
    ['mass', '9'.repeat(60), 'g', 'above-range'],
    ['mass', '9'.repeat(65), 'g', 'too-long'],
  ])('%s: "%s"', (kind, text, unit, expected) => {
    expect(value(kind, text, unit)).toBe(expected);
  });

  it('takes a field whose unit belongs to another kind for a bad entry, not for a crash', () => {
    expect(value('mass', '5', 'C')).toBe('wrong-kind');
  });
});

describe('an error of a thousand is impossible with a comma and visible with a point', () => {
  it('names both readings of a lone comma before three digits', () => {
    const parsed = parseQuantity('mass', '1,234', 'g');
    expect(parsed).toEqual({
      ok: false,
      issue: { code: 'ambiguous-comma', params: { found: '1,234', thousands: '1234', decimal: '1.234' } },
    });
  });

  it('marks a lone point before three digits where a thousandfold would be possible too', () => {
    const doubtful = parseQuantity('mass', '1.250', 'g');
    expect(doubtful.ok && doubtful.value.notice).toBe('point-thousand');
    const sure = parseQuantity('density', '1.040', 'g/mL');
    expect(sure.ok && sure.value.notice).toBe(null);
  });
});

describe('curing salt is taken in grams only', () => {
  const read = (text: string, unit: Unit = 'g') => {
    const parsed = parseQuantity('mass', text, unit, { gramsOnly: true });
    return parsed.ok ? parsed.value.value : parsed.issue.code;
  };
  it.each(['5.4', '5.4 g', '5,4 g', '5.4 grams'])('%s', (text) => expect(read(text)).toBe(5.4));
  it.each(['5.4 kg', '1/4 oz', '1 lb', '1 kg 5 g', '5400 mg', '-5 oz'])('%s is refused', (text) =>
    expect(read(text)).toBe('grams-only'),
  );
  it('refuses a bare number in a field set to another unit', () =>
    expect(read('5', 'oz')).toBe('grams-only'));
  it('sends spoons to the scale', () => expect(read('1 tsp')).toBe('spoon-or-cup'));
});

describe('any text', () => {
  it('gives a finite value inside the physical range, or an issue, and never throws', () => {
    const kinds: [QuantityKind, Unit][] = [
      ['mass', 'g'],
      ['temperature', 'F'],
      ['time', 'min'],
      ['fraction', '%'],
      ['count', 'count'],
    ];
    const noise = fc.string({ unit: fc.constantFrom(..."0123456789.,'/ -–−½kglboz°CFhmin:%eE") });
    fc.assert(
      fc.property(fc.oneof(fc.string(), noise), fc.constantFrom(...kinds), (text, [kind, unit]) => {
        const parsed = parseQuantity(kind, text, unit);
        if (parsed.ok) expect(Number.isFinite(parsed.value.value)).toBe(true);
        else expect(parsed.issue.code).toBeTypeOf('string');
      }),
      { numRuns: 3000 },
    );
  });

  it('of a hostile shape is answered at once', () => {
    const started = performance.now();
    for (const text of [
      '1 '.repeat(32),
      '1,'.repeat(32),
      "1'000".repeat(12),
      '°'.repeat(64),
      'x'.repeat(1e6),
    ])
      parseQuantity('mass', text, 'g');
    expect(performance.now() - started).toBeLessThan(200);
  });
});

it('a plain number is read the same by the short way and, with a space before it, by the long one', () => {
  const plain = fc
    .tuple(
      fc.boolean(),
      fc.integer({ min: 0, max: 9_999_999 }),
      fc.constantFrom(0, 1, 2, 4, 6),
      fc.nat(999_999),
    )
    .map(([below, whole, places, part]) =>
      [below ? '-' : '', whole, places > 0 ? `.${String(part).padStart(6, '0').slice(0, places)}` : ''].join(
        '',
      ),
    );
  const fields = fc.constantFrom<[QuantityKind, Unit]>(
    ['mass', 'lb'],
    ['temperature', 'F'],
    ['temperature', 'C'],
    ['temperature-difference', 'dF'],
    ['fraction', '%'],
    ['count', 'count'],
    ['time', 'h'],
    ['mass', 'C'],
  );
  fc.assert(
    fc.property(plain, fields, fc.boolean(), (text, [kind, unit], gramsOnly) => {
      const options = gramsOnly ? { gramsOnly } : {};
      expect(parseQuantity(kind, text, unit, options)).toEqual(
        parseQuantity(kind, ` ${text}`, unit, options),
      );
    }),
    { numRuns: 500 },
  );
});

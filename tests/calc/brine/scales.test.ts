import {
  BRINE_FREEZING,
  BRINE_TABLE,
  type BrineScale,
  baumeFromGravity,
  brineFreezesC,
  brineGravity,
  brineStrength,
  estimateWaterActivity,
  gravityFromBaume,
  SALOMETER_SCALES,
  SATURATED_FRACTION,
  salometerDegrees,
  saltFromReading,
  saltFromSalometer,
  WATER_ACTIVITY_TABLE,
  waterActivityPitzer,
  waterActivityQuadratic,
} from '@larderwright/calc/brine';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

describe('the brine table', () => {
  // Brine table at 60 °F: per cent by definition of the scale (salometer manual), the rest derived, 90–100 from memory.
  test('is carried whole: 21 rows, 0 to 100 degrees by five', () => {
    expect(BRINE_TABLE.map(({ salometer }) => salometer)).toEqual(
      Array.from({ length: 21 }, (_, i) => i * 5),
    );
    expect(BRINE_TABLE.filter(({ mark }) => mark === 'memory').map(({ salometer }) => salometer)).toEqual([
      90, 95, 100,
    ]);
  });

  test('holds its spot values at 40 and 100 degrees', () => {
    expect(BRINE_TABLE[8]).toEqual({
      salometer: 40,
      saltPercent: 10.558,
      specificGravity: 1.0774,
      tradeSpecificGravity: 1.078,
      baume: 10.4,
      saltGPerLitreBrine: 113.6,
      saltGPerKgWater: 118,
      saltLbPerGallonBrine: 0.948,
      saltLbPerGallonWater: 0.984,
      waterActivity: 0.9308,
      mark: 'derived',
    });
    expect(BRINE_TABLE[20]).toMatchObject({ saltPercent: 26.395, specificGravity: 1.204, baume: 24.6 });
  });

  // Derived: every column follows from the per cent and the specific gravity of its row.
  test('agrees with the conversions in every row and column', () => {
    for (const row of BRINE_TABLE) {
      const of = brineStrength((row.salometer / 100) * SATURATED_FRACTION);
      const at = `${row.salometer} degrees`;
      expect(Math.abs((of?.fraction ?? 0) * 100 - row.saltPercent), at).toBeLessThan(0.00051);
      expect(of?.baume, at).toBeCloseTo(row.baume, 1);
      expect(Math.abs((of?.['g-per-litre-brine'] ?? 0) - row.saltGPerLitreBrine), at).toBeLessThan(0.07);
      expect(Math.abs((of?.['g-per-kg-water'] ?? 0) - row.saltGPerKgWater), at).toBeLessThan(0.06);
      expect(of?.['lb-per-gallon-brine'], at).toBeCloseTo(row.saltLbPerGallonBrine, 2);
      expect(of?.['lb-per-gallon-water'], at).toBeCloseTo(row.saltLbPerGallonWater, 2);
      expect(waterActivityPitzer(row.saltPercent / 100), at).toBeCloseTo(row.waterActivity, 3);
    }
  });

  // From memory: the trade table agrees with the derived gravities within 0.001.
  test('lies within 0.001 of the trade table where that is remembered', () => {
    const known = BRINE_TABLE.filter(({ tradeSpecificGravity }) => tradeSpecificGravity !== null);
    expect(known).toHaveLength(11);
    for (const row of known) {
      expect(Math.abs(row.specificGravity - (row.tradeSpecificGravity ?? 0))).toBeLessThanOrEqual(0.001);
    }
  });

  // CRC Handbook: depression at 5, 10, 15 and 20 %; eutectic 23.3 % at −21.1 °C.
  test('freezing points: six, and none beyond the eutectic', () => {
    expect(BRINE_FREEZING).toHaveLength(6);
    expect(brineFreezesC(0.15)).toBeCloseTo(-10.89, 9);
    expect(brineFreezesC(0.25)).toBeNull();
  });
});

describe('scales of a brine', () => {
  // The salometer manual: saturated 26.395 % at 60 °F, pickling scale 25 %; hydrometer suppliers 26.4 and 26.5 %.
  test('four salometers share a name; the scale is named', () => {
    expect(SALOMETER_SCALES.map(({ saltAt100Fraction }) => saltAt100Fraction)).toEqual([
      0.26395, 0.264, 0.265, 0.25,
    ]);
    expect(salometerDegrees(0.25, 'pickling')).toBe(100);
    expect(saltFromSalometer(101)).toBeNull();
  });

  const scales: BrineScale[] = [
    'fraction',
    'salometer',
    'specific-gravity',
    'baume',
    'g-per-litre-brine',
    'g-per-kg-water',
    'lb-per-gallon-brine',
    'lb-per-gallon-water',
  ];

  test('reading any scale back gives the brine again', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: SATURATED_FRACTION, noNaN: true }),
        fc.constantFrom(...scales),
        (salt, scale) => {
          const reading = brineStrength(salt)?.[scale] ?? Number.NaN;
          expect(saltFromReading(scale, reading)).toBeCloseTo(salt, 9);
        },
      ),
    );
  });

  test('a saltier brine reads higher in every scale', () => {
    const two = fc.tuple(
      fc.double({ min: 0, max: 0.26, noNaN: true }),
      fc.double({ min: 0.0001, max: 0.003, noNaN: true }),
    );
    fc.assert(
      fc.property(two, ([salt, more]) => {
        const [weak, strong] = [brineStrength(salt), brineStrength(salt + more)];
        for (const scale of scales) expect(strong?.[scale]).toBeGreaterThan(weak?.[scale] ?? Number.NaN);
      }),
    );
  });

  test('Baumé and specific gravity are each other’s inverse', () => {
    expect(gravityFromBaume(baumeFromGravity(1.15) ?? Number.NaN)).toBeCloseTo(1.15, 12);
    expect(baumeFromGravity(0.99)).toBeNull();
    expect(gravityFromBaume(145)).toBeNull();
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, -0.01, 0.27, 1.2])('%s is no salt brine', (salt) => {
    expect(brineStrength(salt)).toBeNull();
    expect(brineGravity(salt)).toBeNull();
    for (const scale of scales) expect(saltFromReading(scale, salt === 1.2 ? -5 : Number.NaN)).toBeNull();
  });
});

describe('water activity of salt on water', () => {
  // Derived by the Pitzer form (parameters from memory) beside the quadratic (coefficients from memory).
  const printed = [
    [2, 0.349, 0.9885, 0.989],
    [3, 0.529, 0.9826, 0.9832],
    [3.5, 0.621, 0.9796, 0.9801],
    [4, 0.713, 0.9765, 0.9771],
    [6, 1.092, 0.9637, 0.9641],
    [8, 1.488, 0.95, 0.9502],
    [10, 1.901, 0.9351, 0.9353],
    [12, 2.333, 0.9191, 0.9195],
    [14, 2.786, 0.9016, 0.9026],
    [16, 3.259, 0.8826, 0.8848],
    [18, 3.756, 0.8619, 0.866],
    [20, 4.278, 0.8394, 0.8462],
  ] as const;

  test('the table has twelve rows, and each agrees', () => {
    expect(WATER_ACTIVITY_TABLE).toHaveLength(12);
    for (const [index, [percent, mol, pitzer, quadratic]] of printed.entries()) {
      const row = WATER_ACTIVITY_TABLE[index];
      expect(row?.waterPhaseSaltPercent).toBe(percent);
      expect(row?.molality).toBeCloseTo(mol, 2);
      expect(Math.abs((row?.pitzer ?? 0) - pitzer)).toBeLessThan(0.0001);
      expect(Math.abs((row?.quadratic ?? 0) - quadratic)).toBeLessThan(0.0001);
    }
  });

  // Textbook figures, from memory: 2.8 % ≈ 0.984, 3.5 % ≈ 0.980, 5 % ≈ 0.970, 10 % ≈ 0.937.
  test.each([
    [0.028, 0.984],
    [0.035, 0.98],
    [0.05, 0.97],
    [0.1, 0.937],
  ])('at %s the estimate is near %s', (salt, aw) => {
    expect(Math.abs((estimateWaterActivity(salt)?.high ?? 0) - aw)).toBeLessThan(0.002);
  });

  test('more salt is always drier, and the range holds both forms', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.25, noNaN: true }), (salt) => {
        const [wet, dry] = [estimateWaterActivity(salt), estimateWaterActivity(salt + 0.005)];
        expect(dry?.pitzer).toBeLessThan(wet?.pitzer ?? 0);
        expect(dry?.quadratic).toBeLessThan(wet?.quadratic ?? 0);
        expect(wet?.high).toBe(Math.max(wet?.pitzer ?? 0, wet?.quadratic ?? 0));
        expect(wet?.low).toBeLessThanOrEqual(wet?.high ?? 0);
      }),
    );
    expect(waterActivityPitzer(0)).toBe(1);
    expect(waterActivityQuadratic(0.3)).toBeNull();
    expect(estimateWaterActivity(Number.NaN)).toBeNull();
  });
});

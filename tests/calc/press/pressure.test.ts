import { PRESS_BANDS, pressLoadKg, pressPressureKPa } from '@larderwright/calc/press';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

describe('load and pressure', () => {
  test('0.7 kPa on a board of 290 × 95 mm takes 1.97 kg (derived)', () => {
    expect(pressLoadKg(0.7, 290 * 95)).toBeCloseTo(1.97, 2);
  });

  test('2.0 kg on a board of 290 × 95 mm presses with 0.712 kPa (derived)', () => {
    expect(pressPressureKPa(2, 290 * 95)).toBeCloseTo(0.712, 3);
  });

  test.each([
    [0.5, 255, 85, 1.1],
    [0.7, 290, 95, 2],
    [1, 320, 110, 3.6],
    [1.5, 300, 60, 2.8],
  ])('%f kPa on %f × %f mm takes %f kg (derived)', (kPa, lengthMm, widthMm, kg) => {
    expect(pressLoadKg(kPa, lengthMm * widthMm)).toBeCloseTo(kg, 1);
  });

  test('two 400 g tins on a board of 240 × 100 mm press with about 0.3 kPa (common practice, no source)', () => {
    expect(pressPressureKPa(0.8, 240 * 100)).toBeCloseTo(0.3, 1);
  });

  test('each undoes the other', () => {
    const kg = fc.double({ min: 0, max: 100, noNaN: true });
    const mm2 = fc.double({ min: 1000, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(kg, mm2, (loadKg, area) => {
        const kPa = pressPressureKPa(loadKg, area) ?? Number.NaN;
        expect(pressLoadKg(kPa, area)).toBeCloseTo(loadKg, 9);
      }),
    );
  });

  test('an unusable number or a board of no area gives null', () => {
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, -1]) {
      expect(pressPressureKPa(bad, 1000)).toBeNull();
      expect(pressPressureKPa(1, bad)).toBeNull();
      expect(pressLoadKg(bad, 1000)).toBeNull();
      expect(pressLoadKg(1, bad)).toBeNull();
    }
    expect(pressPressureKPa(1, 0)).toBeNull();
    expect(pressLoadKg(1, -0)).toBeNull();
  });

  test('every band rises from low to high', () => {
    for (const band of PRESS_BANDS) expect(band.highKPa, band.id).toBeGreaterThanOrEqual(band.lowKPa);
  });
});

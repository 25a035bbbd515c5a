import { estimateWaterActivity, saltFromSalometer } from '@larderwright/calc/brine';
import { WORKING_WATER_HEATS } from '@larderwright/calc/chill-budget';
import { FORMULA_WEIGHT } from '@larderwright/calc/cure';
import { SALT_DIFFUSION_M2_PER_S } from '@larderwright/calc/dry-cure';
import { conductivityWmK, densityKgM3, FILMS, specificHeatJkgK } from '@larderwright/calc/heat';
import { COOK_RULE_SETS, isByFat } from '@larderwright/calc/lethality';
import { STANDARD_GRAVITY_M_PER_S2 } from '@larderwright/calc/press';
import { convert } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';

describe('constants of the trade', () => {
  test('molar factors: NaNO₂ to ion 0.6668, back 1.4997, KNO₂ to NaNO₂ 0.8107, NaNO₃ to ion 0.7295, KNO₃ to ion 0.6133 (derived from atomic weights)', () => {
    const { sodiumNitrite, potassiumNitrite, nitriteIon, sodiumNitrate, potassiumNitrate, nitrateIon } =
      FORMULA_WEIGHT;
    expect(nitriteIon / sodiumNitrite).toBeCloseTo(0.6668, 4);
    expect(sodiumNitrite / nitriteIon).toBeCloseTo(1.4997, 4);
    expect(sodiumNitrite / potassiumNitrite).toBeCloseTo(0.8107, 4);
    expect(nitrateIon / sodiumNitrate).toBeCloseTo(0.7295, 4);
    expect(nitrateIon / potassiumNitrate).toBeCloseTo(0.6133, 4);
  });

  test('saturated brine is 26.4 % and 100 degrees of the salometer (United States federal meat manual)', () =>
    expect((saltFromSalometer(100) ?? Number.NaN) * 100).toBeCloseTo(26.4, 1));

  test('salt on water of 2.8, 3.5, 5 and 10 % is a water activity of 0.984, 0.980, 0.970 and 0.937 (from memory, ± 0.002)', () => {
    for (const [percent, activity] of [
      [2.8, 0.984],
      [3.5, 0.98],
      [5, 0.97],
      [10, 0.937],
    ] as const) {
      const estimate = estimateWaterActivity(percent / 100);
      expect(Math.abs((estimate?.pitzer ?? Number.NaN) - activity), `${percent} %`).toBeLessThanOrEqual(
        0.002,
      );
      expect(estimate?.high).toBeGreaterThanOrEqual(estimate?.low ?? Number.NaN);
    }
  });

  test('salt diffuses through muscle at 2 to 5 °C by 2 to 5 × 10⁻¹⁰ m²/s (from memory)', () =>
    expect(SALT_DIFFUSION_M2_PER_S).toEqual({ slow: 2e-10, fast: 5e-10 }));

  test('working heats: water 4.18, ice 2.1 kJ/(kg·K), fusion 334 kJ/kg (common practice)', () =>
    expect(WORKING_WATER_HEATS).toEqual({ waterJkgK: 4180, iceJkgK: 2100, fusionJkg: 334_000 }));

  test('films: a walk-in of 5–10, a blast of 20–35 and ice water of 150–300 W/(m²·K) lie within those used (from memory)', () => {
    const within = ({ low, high }: { low: number; high: number }, w: number) => w >= low && w <= high;
    expect(within(FILMS.refrigerator, 8)).toBe(true);
    expect(within(FILMS.blast, 35)).toBe(true);
    expect(within(FILMS.stillIceWater, 200)).toBe(true);
    // The value counted on for cold stays on the slow side of its range.
    for (const cold of [FILMS.refrigerator, FILMS.blast, FILMS.stillIceWater])
      expect(cold.usual - cold.low).toBeLessThanOrEqual(cold.high - cold.usual);
  });

  describe('heat of the mix, by its composition (textbook ranges, from memory; 5 % beside them are allowed)', () => {
    const meat = (water: number, protein: number, fat: number, ash: number) => ({
      water,
      protein,
      fat,
      ash,
      carbohydrate: 0,
      fibre: 0,
    });
    const LEAN = meat(0.72, 0.21, 0.06, 0.01);
    const FORCEMEATS = [meat(0.6, 0.165, 0.22, 0.015), meat(0.52, 0.145, 0.32, 0.015)];
    const FAT = meat(0.2, 0.06, 0.74, 0);
    const expectNear = (value: number, low: number, high: number) => {
      expect(value).toBeGreaterThanOrEqual(low * 0.95);
      expect(value).toBeLessThanOrEqual(high * 1.05);
    };

    test('heat capacity: lean 3.4–3.5, forcemeat 2.9–3.3, fat 2.3–2.6 kJ/(kg·K), melting apart', () => {
      expectNear(specificHeatJkgK(LEAN, 20), 3400, 3500);
      for (const mix of FORCEMEATS) expectNear(specificHeatJkgK(mix, 20), 2900, 3300);
      expectNear(specificHeatJkgK(FAT, 20), 2300, 2600);
    });

    test('conductivity: 0.40–0.48 W/(m·K) for a forcemeat, down to 0.26 for an emulsion rich in fat', () => {
      expectNear(conductivityWmK(FORCEMEATS[0] ?? LEAN, 20), 0.4, 0.48);
      for (const mix of FORCEMEATS) expectNear(conductivityWmK(mix, 40), 0.26, 0.48);
    });

    test('diffusivity: 1.2–1.5 × 10⁻⁷ m²/s', () => {
      for (const mix of FORCEMEATS)
        for (const tempC of [20, 40, 60]) {
          const capacity = specificHeatJkgK(mix, tempC) * densityKgM3(mix, tempC);
          expectNear((conductivityWmK(mix, tempC) / capacity) * 1e7, 1.2, 1.5);
        }
    });
  });

  test('gravity is 9.81 m/s² (standard gravity 9.80665, CGPM 1901)', () =>
    expect(STANDARD_GRAVITY_M_PER_S2).toBeCloseTo(9.81, 2));

  test('the United States meat table runs near 12 min × 10^((60 − T) ÷ 5.56): the fit is a check of the table, within a tenth and its rounding, and nothing is judged by it', () => {
    const table = COOK_RULE_SETS.find(({ id }) => id === 'us-fsis-meat-6.5')?.limits ?? [];
    const timed = table.flatMap(({ stated, hold }) =>
      isByFat(hold) || hold.s < 60 ? [] : [{ tempC: convert(stated.value, 'F', 'C'), ...hold }],
    );
    expect(timed).toHaveLength(21);
    for (const { tempC, s, printed } of timed) {
      const fitS = 12 * 60 * 10 ** ((60 - tempC) / 5.56);
      const roundingS = printed.endsWith('min') ? 30 : 0.5;
      expect(Math.abs(fitS - s), printed).toBeLessThanOrEqual(0.1 * s + roundingS);
    }
  });
});

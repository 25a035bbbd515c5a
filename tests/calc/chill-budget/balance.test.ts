import {
  BACK_FAT,
  constantHeat,
  excessHeatJ,
  FAT_MELTING_JKGK,
  fatMeltingJkg,
  type HeatLot,
  heatOfLots,
  heatOfMix,
  iceInMeatG,
  iceNeededG,
  LEAN,
  meatHeat,
  minutesToWarm,
  mixTempC,
  thawedHeatJK,
  trimOfFat,
  WATER_HEATS,
  WORKING_WATER_HEATS,
  waterHeat,
  workJkg,
} from '@larderwright/calc/chill-budget';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

/** Lean (water 72, protein 20 %) and back fat, both freezing at −1.7 °C, enthalpy by Chen. */
const lean = (kg: number, tempC: number): HeatLot => ({ massG: kg * 1000, tempC, heat: meatHeat(LEAN) });
const fat = (kg: number, tempC: number): HeatLot => ({ massG: kg * 1000, tempC, heat: meatHeat(BACK_FAT) });
const endC = (lots: readonly HeatLot[], workKj: number) => mixTempC(lots, heatOfLots(lots) + workKj * 1000);

describe('ice needed', () => {
  it('G1 (derived): 8 kg lean at 4 and 2 kg back fat at 2 with 100 kJ to 2 °C, ice at −10: 156.5 kJ, 432 g', () => {
    const lots = [lean(8, 4), fat(2, 2)];
    const excess = excessHeatJ(lots, 100_000, 2);
    expect(excess / 1000).toBeCloseTo(156.5, 1);
    expect((excess / (iceNeededG(excess, 2, -10) ?? 0)) * 1).toBeCloseTo(362.5, 1);
    expect((iceNeededG(excess, 2, -10) ?? 0) / 1000).toBeCloseTo(0.432, 3);
  });

  it('G2 (derived): 8 kg lean and 2 kg fat at 6 with 150 kJ to 2 °C: 727 g of ice at −18, 806 g at 0', () => {
    const excess = excessHeatJ([lean(8, 6), fat(2, 6)], 150_000, 2);
    expect(excess / 1000).toBeCloseTo(275.6, 1);
    expect((iceNeededG(excess, 2, -18) ?? 0) / 1000).toBeCloseTo(0.727, 3);
    expect((iceNeededG(excess, 2, 0) ?? 0) / 1000).toBeCloseTo(0.806, 3);
  });

  it('3 kg lean at 4 and 1 kg fat at 2, chopping +12 °C, end 10 °C, ice at −2: 187 g (calculated from working values)', () => {
    // Working heats of the trade: lean 3.4, fat 2.5, water 4.18, ice 2.1 kJ/(kg·K), fusion 334 kJ/kg.
    const lots: HeatLot[] = [
      { massG: 3000, tempC: 4, heat: constantHeat(3400) },
      { massG: 1000, tempC: 2, heat: constantHeat(2500) },
    ];
    const workJ = 12 * thawedHeatJK(lots);
    const iceG = iceNeededG(excessHeatJ(lots, workJ, 10), 10, -2, WORKING_WATER_HEATS);
    expect(iceG).toBeCloseTo(187.4, 1);
    expect((iceG ?? 0) / 4000).toBeCloseTo(0.047, 3);
  });

  it('is none when the mix ends cold enough, and unknown where ice cannot melt', () => {
    expect(iceNeededG(-5, 2, -10)).toBe(0);
    expect(iceNeededG(1000, -0.1, -10)).toBe(null);
    expect(iceNeededG(1000, 2, 1)).toBe(null);
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY]) expect(iceNeededG(bad, 2, -10)).toBe(null);
  });

  it('put into the mix as a lot of ice, it ends at just that temperature', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 12, noNaN: true }),
        fc.double({ min: -25, max: 0, noNaN: true }),
        fc.double({ min: 0.5, max: 10, noNaN: true }),
        (startC, iceC, wantedC) => {
          const lots = [lean(8, startC), fat(2, startC)];
          const iceG = iceNeededG(excessHeatJ(lots, 200_000, wantedC), wantedC, iceC) ?? 0;
          if (iceG === 0) return;
          const iceLot = { massG: iceG, tempC: iceC === 0 ? -1e-12 : iceC, heat: waterHeat() };
          expect(endC([...lots, iceLot], 200)).toBeCloseTo(wantedC, 6);
        },
      ),
    );
  });
});

describe('part-frozen meat', () => {
  it('G3 (derived): 4 kg at −5, 4 kg at 4 and 2 kg fat at 0 with 100 kJ: −2.19 °C and 1.18 kg of ice left, no thawed batch', () => {
    const lots = [lean(4, -5), lean(4, 4), fat(2, 0)];
    const mixC = endC(lots, 100) ?? Number.NaN;
    expect(mixC).toBeCloseTo(-2.19, 2);
    expect(iceInMeatG(lots, mixC) / 1000).toBeCloseTo(1.18, 2);
  });

  it('G4 (derived): 8 kg lean and 2 kg fat at −1, not frozen, with 100 kJ: 2.18 °C', () => {
    expect(endC([lean(8, -1), fat(2, -1)], 100)).toBeCloseTo(2.18, 2);
  });

  it.each([
    // derived
    [100, -2.74, 1.99],
    [250, -2.42, 1.56],
  ])('G5: the same at −3, part frozen, with %d kJ: %d °C, %d kg of ice left', (workKj, wantedC, iceKg) => {
    const lots = [lean(8, -3), fat(2, -3)];
    const mixC = endC(lots, workKj) ?? Number.NaN;
    expect(mixC).toBeCloseTo(wantedC, 2);
    expect(iceInMeatG(lots, mixC) / 1000).toBeCloseTo(iceKg, 2);
  });

  /** derived: end of one pass of 80 : 20 lean and back fat, all heat kept, by work in kJ/kg. */
  const PASS: readonly (readonly [workKjKg: number, ends: Readonly<Record<number, number>>])[] = [
    [5, { '-3': -2.86, '-2': -1.94, '-1': 0.59, 0: 1.59, 2: 3.59, 4: 5.59 }],
    [10, { '-3': -2.74, '-2': -1.88, '-1': 2.18, 0: 3.18, 2: 5.18, 4: 7.18 }],
    [20, { '-3': -2.52, '-2': -1.77, '-1': 5.37, 0: 6.37, 2: 8.37, 4: 10.37 }],
    [30, { '-3': -2.33, '-2': -0.71, '-1': 8.55, 0: 9.55, 2: 11.55, 4: 13.55 }],
  ];
  it.each(
    PASS.flatMap(([work, ends]) =>
      Object.entries(ends).map(([start, end]) => [work, Number(start), end] as const),
    ),
  )('one pass of %d kJ/kg from %d °C ends at %d °C', (workKjKg, startC, wantedC) => {
    expect(Math.abs((endC([lean(8, startC), fat(2, startC)], workKjKg * 10) ?? 0) - wantedC)).toBeLessThan(
      0.006,
    );
  });

  it('of a pass: 250 W at 60 kg/h is 15 kJ/kg (derived)', () => {
    expect(workJkg(250, 60)).toBe(15_000);
    expect(workJkg(250, 0)).toBe(null);
    expect(workJkg(Number.NaN, 60)).toBe(null);
  });
});

describe('the balance of heat', () => {
  const anyLots = fc.array(
    fc.record({
      kg: fc.double({ min: 0.05, max: 20, noNaN: true }),
      tempC: fc.double({ min: -25, max: 20, noNaN: true }),
      fatFraction: fc.double({ min: 0, max: 1, noNaN: true }),
      melting: fc.boolean(),
    }),
    { minLength: 1, maxLength: 5 },
  );
  const made = (
    lots: readonly { kg: number; tempC: number; fatFraction: number; melting: boolean }[],
  ): HeatLot[] =>
    lots.map(({ kg, tempC, fatFraction, melting }) => ({
      massG: kg * 1000,
      tempC,
      heat: meatHeat(trimOfFat(fatFraction), { melting }),
    }));

  it('keeps all of it: the mix holds what its lots and the work brought', () => {
    fc.assert(
      fc.property(anyLots, fc.double({ min: 0, max: 500, noNaN: true }), (given, workKj) => {
        const lots = made(given);
        const mixC = endC(lots, workKj);
        if (mixC === null) return;
        expect(Math.abs(heatOfMix(lots, mixC) - heatOfLots(lots) - workKj * 1000)).toBeLessThan(1);
      }),
    );
  });

  it('ends between its coldest and its warmest lot without work, and more work never cools', () => {
    fc.assert(
      fc.property(anyLots, fc.double({ min: 0, max: 200, noNaN: true }), (given, workKj) => {
        const lots = made(given);
        const still = endC(lots, 0) ?? Number.NaN;
        expect(still).toBeGreaterThanOrEqual(Math.min(...given.map(({ tempC }) => tempC)) - 1e-6);
        expect(still).toBeLessThanOrEqual(Math.max(...given.map(({ tempC }) => tempC)) + 1e-6);
        expect(endC(lots, workKj) ?? 99).toBeGreaterThanOrEqual(still - 1e-9);
      }),
    );
  });

  it('gives nothing for an empty mix, masses or heats that are no numbers, or heat beyond all meat', () => {
    expect(mixTempC([], 0)).toBe(null);
    expect(mixTempC([lean(1, 4)], Number.NaN)).toBe(null);
    expect(mixTempC([lean(1, 4)], 1e12)).toBe(null);
    expect(mixTempC([lean(1, 4)], -1e12)).toBe(null);
    expect(mixTempC([{ ...lean(1, 4), massG: -1 }], 0)).toBe(null);
  });

  it('water stays at 0 °C until its ice is melted', () => {
    // derived: half of a kilogram of ice at 0 °C melts with half the heat of fusion, 333.6 kJ/kg.
    const water = { massG: 1000, tempC: -1e-12, heat: waterHeat() };
    expect(mixTempC([water], heatOfLots([water]) + 0.5 * WATER_HEATS.fusionJkg)).toBe(0);
  });
});

describe('heat of meat and fat', () => {
  it('of thawed lean is 3.53 and of back fat without melting 1.57 kJ/(kg·K) (Chen 1985, from memory)', () => {
    expect(meatHeat(LEAN).thawedJkgK / 1000).toBeCloseTo(3.532, 3);
    expect(meatHeat(BACK_FAT).thawedJkgK / 1000).toBeCloseTo(1.573, 2);
  });

  it('of melting is 2.07 kJ/(kg·K) of fat from 0 to 21 °C: lard takes up 4.80 falling to 3.34 there (James, table 13.6)', () => {
    // derived: mean of the two less 2.0 kJ/(kg·K) without melting.
    expect(FAT_MELTING_JKGK / 1000).toBeCloseTo((4.8 + 3.34) / 2 - 2, 2);
    expect(fatMeltingJkg(-5)).toBe(0);
    expect(fatMeltingJkg(10)).toBeCloseTo(20_700, 6);
    expect(fatMeltingJkg(30)).toBe(fatMeltingJkg(21));
  });

  it('with melting counted the same work warms fat less', () => {
    const melting: HeatLot = { ...fat(2, 2), heat: meatHeat(BACK_FAT, { melting: true }) };
    expect(endC([lean(8, 2), melting], 200) ?? 99).toBeLessThan(endC([lean(8, 2), fat(2, 2)], 200) ?? 0);
  });

  it('of a blend goes from lean to back fat, and no further', () => {
    expect(trimOfFat(0)).toEqual(LEAN);
    expect(trimOfFat(1).fat).toBeCloseTo(BACK_FAT.fat, 12);
    expect(trimOfFat(0.3).fat).toBeCloseTo(0.3, 12);
  });
});

describe('minutes in the room', () => {
  const meat = { lots: [lean(4, 2)], massG: 4000, layerMm: 50, roomC: 20, filmWm2K: 12 };

  it('follow the exponential of a body of one temperature while nothing melts (derived)', () => {
    // t = m c ÷ (film × area) × ln((20 − 2) ÷ (20 − 7)); area 2 × 4 kg ÷ 1.04 ÷ 50 mm.
    const areaM2 = (2 * (4 / 1.04)) / 50;
    const wanted = ((4 * 3532) / (12 * areaM2) / 60) * Math.log(18 / 13);
    expect((minutesToWarm(meat, 2, 7) ?? 0) / wanted).toBeCloseTo(1, 3);
  });

  it('are none when it is warm already, endless in a cold room, unknown without measures', () => {
    expect(minutesToWarm(meat, 8, 7)).toBe(0);
    expect(minutesToWarm({ ...meat, roomC: 7 }, 2, 7)).toBe(Number.POSITIVE_INFINITY);
    for (const bad of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(minutesToWarm({ ...meat, layerMm: bad }, 2, 7)).toBe(null);
      expect(minutesToWarm({ ...meat, massG: bad }, 2, 7)).toBe(null);
    }
    expect(minutesToWarm(meat, Number.NaN, 7)).toBe(null);
  });

  it('are fewer in a warmer room and a thinner layer', () => {
    const at = (roomC: number, layerMm: number) => minutesToWarm({ ...meat, roomC, layerMm }, 2, 7) ?? 0;
    expect(at(25, 50)).toBeLessThan(at(20, 50));
    expect(at(20, 30)).toBeLessThan(at(20, 50));
  });
});

import { casingForG, massPerMetreG } from '@larderwright/calc/casings';
import {
  constantHeat,
  excessHeatJ,
  type HeatLot,
  iceNeededG,
  thawedHeatJK,
  WORKING_WATER_HEATS,
} from '@larderwright/calc/chill-budget';
import {
  curingSaltForTarget,
  GROSS_ERROR_PPM,
  isWeighable,
  nitriteIonFromSodiumNitrite,
  nitritePpm,
  saltToRaise,
  sodiumNitriteFromNitriteIon,
  weighingErrorFraction,
} from '@larderwright/calc/cure';
import {
  concentratedFraction,
  remainingFraction,
  saltOnWaterFraction,
  twoTrimBlend,
} from '@larderwright/calc/formula';
import { convertBloom } from '@larderwright/calc/gelee';
import { boilingPointC, pressureAtKPa } from '@larderwright/calc/heat';
import { equivalentMin, LINE_70_Z7_5 } from '@larderwright/calc/lethality';
import { fillOf, mouldGeometry } from '@larderwright/calc/mould';
import { priceAtFoodCost, priceLeaving } from '@larderwright/calc/plan';
import { pressLoadKg, pressPressureKPa } from '@larderwright/calc/press';
import { formatLimitTemp } from '@larderwright/calc/quantities';
import { blendParts } from '@larderwright/calc/seasoning';
import { describe, expect, test } from 'vitest';

// What a practitioner works out by hand and should find again here. `derived`: arithmetic on the figures in the title.
const percentOf = (fraction: number | null | undefined) => (fraction ?? Number.NaN) * 100;

describe('curing salt', () => {
  const dose = (targetPpm: number, basisMassG: number, strength: number) => {
    const made = curingSaltForTarget({
      targetPpm,
      basisMassG,
      countsInBasis: false,
      nitriteFraction: strength,
      readabilityG: 0.01,
      ceilingPpm: 160,
    });
    return made.ok ? made.exactG : null;
  };

  test('120 mg/kg on 2.800 kg with a 6.25 % pack is 5.376 g (derived; method of FSIS Directive 7620.3)', () =>
    expect(dose(120, 2800, 0.0625)).toBeCloseTo(5.376, 9));

  test('156 mg/kg on 10 kg with a 6.25 % pack is 24.96 g (derived; method of FSIS Directive 7620.3)', () =>
    expect(dose(156, 10_000, 0.0625)).toBeCloseTo(24.96, 9));

  test('120 mg/kg to the kilogram takes 20.0 g of a 0.6 % salt and 24.0 g of a 0.5 % one (derived)', () => {
    expect(dose(120, 1000, 0.006)).toBeCloseTo(20, 9);
    expect(dose(120, 1000, 0.005)).toBeCloseTo(24, 9);
  });

  test('80 mg/kg as nitrite ion is 120.0 as sodium nitrite (derived: × 68.9953 ÷ 46.0055)', () => {
    expect(sodiumNitriteFromNitriteIon(80)).toBeCloseTo(120, 1);
    expect(nitriteIonFromSodiumNitrite(120)).toBeCloseTo(80, 1);
  });

  test('20 g of a 6.25 % pack on a kilogram by mistake is 1,250 mg/kg, beyond the stop for a gross error (derived)', () => {
    expect(nitritePpm(20 * 0.0625, 1000)).toBe(1250);
    expect(GROSS_ERROR_PPM).toBeLessThan(1250);
  });

  test('5 g on a scale of 1 g is ± 10 % and refused (derived; 50 steps at least: common practice, no source)', () => {
    expect(weighingErrorFraction(5, 1)).toBe(0.1);
    expect(isWeighable(5, 1)).toBe(false);
    expect(
      curingSaltForTarget({
        targetPpm: 125,
        basisMassG: 2500,
        countsInBasis: false,
        nitriteFraction: 0.0625,
        readabilityG: 1,
        ceilingPpm: 156.25,
      }),
    ).toMatchObject({ ok: false, reason: 'too-small-to-weigh', exactG: 5, leastG: 50 });
  });
});

describe('salt', () => {
  test('1.7 % of salt at 60 % of water is 2.76 % on the water (derived)', () =>
    expect(percentOf(saltOnWaterFraction(1.7, 60))).toBeCloseTo(2.76, 2));

  test('3,600 g from 1.50 to 1.65 % takes 5.49 g on the new total and 5.40 g on the old (derived)', () => {
    expect(saltToRaise(3600, 0.015, 0.0165, 'new-total')).toBeCloseTo(5.49, 2);
    expect(saltToRaise(3600, 0.015, 0.0165, 'old-total')).toBeCloseTo(5.4, 9);
  });

  test('3.0 % before drying is 4.62 % after a loss of 35 % (derived)', () =>
    expect(percentOf(concentratedFraction(0.03, 0.35))).toBeCloseTo(4.62, 2));
});

describe('lean and fat', () => {
  test('the square of 3 % and 88 % to 25 % is 74.12 : 25.88 (derived)', () => {
    const square = twoTrimBlend(0.03, 0.88, 0.25);
    expect(percentOf(square?.fractionOfA)).toBeCloseTo(74.12, 2);
    expect(percentOf(square?.fractionOfB)).toBeCloseTo(25.88, 2);
  });

  test('the square of 20 % and 50 % to 15 % has no solution and is refused (derived)', () =>
    expect(twoTrimBlend(0.2, 0.5, 0.15)).toBeNull());
});

describe('moulds and casings', () => {
  const geometry = (...of: Parameters<typeof mouldGeometry>) => {
    const made = mouldGeometry(...of);
    if (!made) throw new Error(`no ${of[0]}`);
    return made;
  };

  test('290 × 95 × 75 mm with 10 mm of headspace at 1.04 holds 1.791 L, 1,862 g (derived)', () => {
    const fill = fillOf({
      geometry: geometry('rectangular', { length: 290, width: 95, depth: 75 }),
      waterFillMl: null,
      headspaceMm: 10,
      liningThicknessMm: 0,
      densityGPerMl: 1.04,
    });
    expect(fill?.fillMl).toBeCloseTo(1790.75, 9);
    expect(fill?.fillG).toBeCloseTo(1862.38, 9);
  });

  test('a roof mould of 75 × 70 × 300 mm filled to half its depth holds 0.197 L, a quarter of 0.788 (derived)', () => {
    const roof = geometry('roof', { width: 75, depth: 70, length: 300 });
    expect(roof.volumeToMm3(70) / 1e6).toBeCloseTo(0.7875, 9);
    expect(roof.volumeToMm3(35) / 1e6).toBeCloseTo(0.7875 / 4, 9);
  });

  test('a taper of 250 × 110 over 230 × 95, 75 mm deep, holds 1.85 L (derived)', () => {
    const taper = geometry('tapered', { length: 250, width: 110, baseLength: 230, baseWidth: 95, depth: 75 });
    expect(taper.volumeToMm3(75) / 1e6).toBeCloseTo(1.85, 2);
  });

  test('a casing of 33 mm takes 0.881 kg a metre, so 10 kg with a tenth to spare take 12.5 m (derived, at 1.03 g/mL)', () => {
    const perMetreG = massPerMetreG(33, 1.03) ?? Number.NaN;
    expect(perMetreG / 1000).toBeCloseTo(0.881, 3);
    expect(casingForG(10_000, perMetreG, 0.1)?.withSpareM).toBeCloseTo(12.5, 1);
  });

  test('0.7 kPa on a board of 290 × 95 mm is 1.97 kg, and 2.0 kg on it are 0.712 kPa (derived)', () => {
    expect(pressLoadKg(0.7, 290 * 95)).toBeCloseTo(1.97, 2);
    expect(pressPressureKPa(2, 290 * 95)).toBeCloseTo(0.712, 3);
  });
});

describe('jelly, seasoning and ice', () => {
  test('3.5 % of gelatine at 200 bloom is 3.13 % at 250 and 3.91 % at 160 by the root rule (derived)', () => {
    expect(convertBloom(3.5, 200, 250)?.squareRootG).toBeCloseTo(3.13, 2);
    expect(convertBloom(3.5, 200, 160)?.squareRootG).toBeCloseTo(3.91, 2);
  });

  test('a blend of 14 : 3 : 2 : 1 at 3 g/kg on 4 kg is 8.4, 1.8, 1.2 and 0.6 g (derived)', () =>
    expect(blendParts([14, 3, 2, 1], 3, 4000)?.map(({ massG }) => Number(massG.toFixed(9)))).toEqual([
      8.4, 1.8, 1.2, 0.6,
    ]));

  test('3 kg of lean at 4 °C and 1 kg of fat at 2 °C, 12 °C of friction, to end at 10 °C: 187 g of ice from −2 °C (derived from working heats, common practice)', () => {
    const lots: HeatLot[] = [
      { massG: 3000, tempC: 4, heat: constantHeat(3400) },
      { massG: 1000, tempC: 2, heat: constantHeat(2500) },
    ];
    const frictionJ = 12 * thawedHeatJK(lots);
    const iceG = iceNeededG(excessHeatJ(lots, frictionJ, 10), 10, -2, WORKING_WATER_HEATS);
    expect(iceG).toBeCloseTo(187, 0);
  });
});

describe('heat', () => {
  test('water boils at 100.0, 95.0 and 90.0 °C at 0, 1,500 and 3,000 m (derived from the standard atmosphere)', () => {
    for (const [altitudeM, boilC] of [
      [0, 100],
      [1500, 95],
      [3000, 90],
    ] as const)
      expect(Math.abs(boilingPointC(pressureAtKPa(altitudeM)) - boilC)).toBeLessThanOrEqual(0.1);
  });

  test('two minutes at 70 °C are 43.1 at 60, 9.28 at 65, 0.43 at 75 and 0.093 at 80 with z 7.5 °C (derived; the UK advice prints 45, 10, 0.5 and 0.1)', () => {
    const at = (tempC: number) => equivalentMin(2, tempC, LINE_70_Z7_5);
    expect(at(60)).toBeCloseTo(43.1, 1);
    expect(at(65)).toBeCloseTo(9.28, 2);
    expect(at(75)).toBeCloseTo(0.43, 2);
    expect(at(80)).toBeCloseTo(0.093, 3);
  });

  test('a minimum of 145 °F shows as 63 °C, 62.8 being exact, and never as 62 (derived)', () =>
    expect(formatLimitTemp({ value: 145, unit: 'F' }, 'minimum').celsius).toBe('63\u00A0°C'));

  test('a maximum of 40 °F shows as 4 °C, 4.4 being exact, and never as 5 (derived)', () =>
    expect(formatLimitTemp({ value: 40, unit: 'F' }, 'maximum').celsius).toBe('4\u00A0°C'));
});

describe('yield and price', () => {
  test('0.92 × 0.97 × 0.98 is 0.8745 cut, 0.874552 in full (derived)', () =>
    expect(remainingFraction([0.08, 0.03, 0.02])).toBeCloseTo(0.874552, 9));

  test('a cost of 0.82 at 70 % gross profit is a price of 2.73 (derived)', () => {
    expect(priceLeaving(0.82, 0.7)).toBeCloseTo(2.73, 2);
    expect(priceAtFoodCost(0.82, 0.3)).toBeCloseTo(2.73, 2);
  });
});

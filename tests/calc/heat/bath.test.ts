import {
  bathBalance,
  bathEquilibriumC,
  boilingPointC,
  evaporationHeatJkg,
  evaporationKgM2S,
  type OvenBath,
  pressureAtKPa,
  saturationKPa,
} from '@larderwright/calc/heat';
import { afterAll, describe, expect, it } from 'vitest';
import { printTable } from './print.ts';

/**
 * derived: roasting pan 350 × 250 mm, 3.0 kg of water, free surface 0.0635 m², heated pan 0.1595 m², Lewis number
 * 0.85, sea level, mould left out; settled temperature of an open bath for oven vapour of 2, 10 and 30 kPa.
 */
const pan: OvenBath = {
  waterG: 3000,
  heatedPanM2: 0.1595,
  freeWaterM2: 0.0635,
  panFilmWm2K: 15,
  surfaceFilmWm2K: 8,
  vapourKPa: 5,
  covered: false,
  pressureKPa: 101.325,
};

const SETTLED = {
  'still oven, dark pan': {
    films: [15, 8],
    rows: { 120: [63.6, 68, 77.3], 150: [70.4, 73.7, 81], 200: [79, 81.1, 86] },
  },
  'fan oven': {
    films: [25, 15],
    rows: { 120: [61.2, 66.1, 76.3], 150: [67.7, 71.5, 79.6], 200: [75.8, 78.4, 84.2] },
  },
  'still oven, bright pan': {
    films: [8, 8],
    rows: { 120: [58.2, 64, 75.3], 150: [64.8, 69.3, 78.4], 200: [73.5, 76.5, 83] },
  },
} as const;

/** Warms a bath for some minutes in steps of a second. */
function warmed(bath: OvenBath, ovenC: number, startC: number, minutes: number): number {
  const balance = bathBalance(bath);
  let bathC = startC;
  for (let s = 0; s < 60 * minutes; s++) bathC += balance(ovenC, bathC, 0);
  return bathC;
}

describe('a water bath in an oven', () => {
  const rows: (string | number)[][] = [];
  afterAll(() =>
    printTable('Settled open bath, °C', ['oven', 'oven °C', 'vapour kPa', 'reference', 'error'], rows),
  );

  it.each(Object.entries(SETTLED))(
    'open, in a %s, settles within 0.5 °C of the reference balance',
    (name, { films, rows: table }) => {
      const [panFilmWm2K, surfaceFilmWm2K] = films;
      for (const [ovenC, wanted] of Object.entries(table)) {
        for (const [index, vapourKPa] of [2, 10, 30].entries()) {
          const got = bathEquilibriumC({ ...pan, panFilmWm2K, surfaceFilmWm2K, vapourKPa }, Number(ovenC));
          const error = got - (wanted[index] ?? Number.NaN);
          rows.push([name, ovenC, vapourKPa, wanted[index] ?? '', error.toFixed(2)]);
          expect(Math.abs(error)).toBeLessThan(0.5);
        }
      }
    },
  );

  it('open at 150 °C warms from 20, 60 and 90 °C as the reference balance does, within 0.7 °C', () => {
    // derived, as above with 5 kPa of vapour: minutes and °C
    const courses = {
      20: { 10: 40.06, 20: 54.81, 30: 63.8, 40: 68.38, 60: 71.2, 120: 71.7 },
      60: { 10: 66.55, 20: 69.61, 40: 71.39, 120: 71.7 },
      90: { 10: 76.7, 20: 73.45, 40: 71.94, 120: 71.7 },
    };
    for (const [start, course] of Object.entries(courses)) {
      for (const [minutes, wanted] of Object.entries(course)) {
        expect(Math.abs(warmed(pan, 150, Number(start), Number(minutes)) - wanted)).toBeLessThan(0.7);
      }
    }
  });

  it('covered climbs until it boils and no further', () => {
    // derived, same balance without evaporation: minutes and °C from 20 and from 60
    const covered = { ...pan, covered: true };
    expect(Math.abs(warmed(covered, 150, 20, 20) - 57.52)).toBeLessThan(0.7);
    expect(Math.abs(warmed(covered, 150, 20, 40) - 84.72)).toBeLessThan(0.7);
    expect(Math.abs(warmed(covered, 150, 60, 20) - 86.51)).toBeLessThan(0.7);
    expect(warmed(covered, 150, 20, 200)).toBeGreaterThan(99);
    expect(warmed(covered, 150, 20, 200)).toBeLessThan(100.01);
    expect(bathEquilibriumC(covered, 150)).toBeCloseTo(100, 1);
  });

  it('loses 11.5 kg an hour from a square metre at 80 °C under 5 kPa of vapour, 7.3 kW', () => {
    // derived, same balance
    const rate = evaporationKgM2S(80, pan);
    expect(rate * 3600).toBeCloseTo(11.5, 0);
    expect((rate * evaporationHeatJkg(80)) / 1000).toBeCloseTo(7.3, 0);
  });

  it('lies in the band measured in an open pan in a moderate oven when the oven is steamy', () => {
    // McGee (2004): 80 °C in a stainless, 83 in a glass, 87 in an iron pan, oven about 175 °C
    expect(bathEquilibriumC({ ...pan, vapourKPa: 30 }, 175)).toBeGreaterThan(80);
    expect(bathEquilibriumC({ ...pan, vapourKPa: 30 }, 175)).toBeLessThan(87);
  });
});

describe('steam and altitude', () => {
  it('boils water where the standard atmosphere says', () => {
    // ICAO standard atmosphere with a vapour-pressure equation, rounded to 0.1 °C
    const table = { 0: 100, 300: 99, 500: 98.3, 1000: 96.7, 1500: 95, 2000: 93.4, 2500: 91.7, 3000: 90 };
    for (const [altitudeM, boilC] of Object.entries(table)) {
      expect(Math.abs(boilingPointC(pressureAtKPa(Number(altitudeM))) - boilC)).toBeLessThan(0.11);
    }
  });

  it('has the saturation pressures of the steam tables', () => {
    // Steam tables, from memory: 0.6113, 2.339, 19.95, 47.41, 101.4 kPa
    const table = { 0.01: 0.6117, 20: 2.339, 60: 19.95, 80: 47.41, 100: 101.42 };
    for (const [tempC, kPa] of Object.entries(table)) {
      expect(Math.abs(saturationKPa(Number(tempC)) / kPa - 1)).toBeLessThan(0.002);
    }
  });
});

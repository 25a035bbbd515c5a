import { coolRuleSet, judgeCooling } from '@larderwright/calc/cooling';
import {
  airStage,
  boilingPointC,
  foodMaterial,
  pressureAtKPa,
  simulate,
  waterStage,
} from '@larderwright/calc/heat';
import { cookStage, judgeHold, LINE_70_Z7_5, lethalRate, UNKNOWN_FACTS } from '@larderwright/calc/lethality';
import { comeUpForThickness } from '@larderwright/calc/plan';
import { instantMs } from '@larderwright/calc/process';
import { convert, formatLimitTemp } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';
import { inventedProcess } from '../../fixtures/invented-processes.ts';

// Figures are derived unless a source stands beside them; the batches are invented.
const MIN_MS = 60_000;
const hold = (temps: readonly number[], stepMin: number, limitC: number, holdMin: number, errorC = 0) =>
  judgeHold(
    temps.map((tempC, i) => ({ atMs: i * stepMin * MIN_MS, tempC, unit: 'C' as const, counts: true })),
    {
      stated: { value: limitC, unit: 'C' },
      holdS: holdMin * 60,
      errorC,
      offsetKnown: true,
      unitSuspect: false,
      heatOver: true,
    },
  );

const mix = foodMaterial({
  water: 0.575,
  protein: 0.16,
  fat: 0.245,
  carbohydrate: 0.005,
  fibre: 0,
  ash: 0.015,
});
const loaf = (depthMm = 75, lengthMm = 290) => {
  if (mix === null) throw new Error('a sound composition was refused');
  return {
    shape: { kind: 'rectangular', lengthMm, widthMm: 95, depthMm },
    material: mix,
    startC: 6,
  } as const;
};

describe('probe', () => {
  test('the core is the slowest spot and not the middle: under slow air it lies above mid-height, over ice the warm spot moves up', () => {
    const water = waterStage('poach', 75, 45, 30, { when: 'time', minutes: 60 });
    const heating = simulate(loaf(), [water], { tier: 'preview' });
    expect(heating?.coreHeightMm.at(-1)).toBeGreaterThan(75 / 2);
    expect(heating?.coreC.at(-1) ?? 0).toBeLessThan(heating?.centreC.at(-1) ?? 0);
    const ice = waterStage('ice-bath', 1, 45, 20, { when: 'time', minutes: 60 });
    const cooling = simulate({ ...loaf(), startC: 72 }, [ice], { tier: 'preview' });
    expect(cooling?.stages[0]?.hottest.upMm).toBeGreaterThan(75 / 2);
  });

  test('several probes: the slowest one rules', () => {
    const process = inventedProcess('countryTerrine', {
      cookRuleSetId: 'uk-advice',
      cookLimitId: 'uk-70C-2min',
    });
    const [log] = process.logs;
    if (!log) throw new Error('no log');
    const cold = {
      ...log,
      id: 'second',
      readings: log.readings.map((one) => ({ ...one, temperature: { ...one.temperature, text: '60' } })),
    };
    const state = (logs: typeof process.logs) =>
      cookStage(
        { process: { ...process, logs } },
        { ...UNKNOWN_FACTS, hasPoultry: false, comminuted: true, hasPorkLiver: false },
      ).verdicts[0]?.state;
    expect(state([log])).toBe('pass');
    expect(state([log, cold])).toBe('fail');
  });

  test('a reading is held to limit + error after its offset: one degree short costs 26 % of the kill at z 7.5 and 34 % at z 5.6', () => {
    expect(1 - lethalRate(69, LINE_70_Z7_5)).toBeCloseTo(0.26, 2);
    expect(1 - lethalRate(69, { refC: 70, zC: 5.6 })).toBeCloseTo(0.34, 2);
    expect(hold([70, 70, 70], 1, 70, 2)).toMatchObject({ state: 'pass', actionC: 70 });
    expect(hold([70.4, 70.4, 70.4], 1, 70, 2, 0.5)).toMatchObject({ state: 'fail', actionC: 70.5 });
  });
});

describe('cook', () => {
  test('touching the limit is no hold: only unbroken time counts, a dip starts again, and pairs are never mixed', () => {
    expect(hold([69, 70, 69], 1, 70, 2).state).toBe('fail');
    expect(hold([70, 70, 69.9, 70, 70], 1, 70, 2)).toMatchObject({ state: 'fail', countedS: 60 });
    expect(hold([70, 70, 70], 1, 70, 2).state).toBe('pass');
    // One minute at 70 and five at 65 °C keep neither 70 for 2 nor 65 for 10.
    const mixed = [70, 70, 65, 65, 65, 65, 65];
    expect(hold(mixed, 1, 70, 2).state).toBe('fail');
    expect(hold(mixed, 1, 65, 10).state).toBe('fail');
  });

  test('carry-over counts where it was logged: the terrine passes on the readings after the oven and not without them', () => {
    const plan = { cookRuleSetId: 'hev-advisory', cookLimitId: 'hev-71C-20min' };
    const facts = { ...UNKNOWN_FACTS, hasPoultry: false, comminuted: true, hasPorkLiver: true };
    const whole = cookStage({ process: inventedProcess('countryTerrine', plan) }, facts);
    const stopped = cookStage(
      { process: inventedProcess('countryTerrine', { ...plan, until: '11:20' }) },
      facts,
    );
    expect(whole.verdicts[0]?.state).toBe('pass');
    expect(whole.findings.map(({ id }) => id)).toContain('cook.carry-over');
    expect(stopped.verdicts[0]?.state).not.toBe('pass');
  });

  test('water boils about one degree lower for every 300 m: a simmer is no temperature, and the boil check is corrected', () => {
    const boil = (altitudeM: number) => boilingPointC(pressureAtKPa(altitudeM));
    for (const altitudeM of [300, 900, 1500])
      expect(boil(0) - boil(altitudeM)).toBeCloseTo(altitudeM / 300, 0);
    expect(boil(1500)).toBeLessThan(95.1);
  });

  test('degrees are never rounded toward danger: minimums go up, maximums go down, and a pair the rule prints is its own', () => {
    const celsius = (value: number, side: 'minimum' | 'maximum', published?: number) =>
      formatLimitTemp({ value, unit: 'F', ...(published === undefined ? {} : { published }) }, side).celsius;
    expect([145, 155, 165].map((f) => celsius(f, 'minimum'))).toEqual([
      '63\u00A0°C',
      '69\u00A0°C',
      '74\u00A0°C',
    ]);
    expect([70, 80, 40].map((f) => celsius(f, 'maximum'))).toEqual(['21\u00A0°C', '26\u00A0°C', '4\u00A0°C']);
    // FDA Food Code 3-401.11 prints 155 °F and 68 °C as one pair.
    expect(celsius(155, 'minimum', 68)).toBe('68\u00A0°C');
    expect(convert(9, 'dF', 'dC')).toBeCloseTo(5, 12);
  });

  test('time follows the smaller side nearly squared and not the weight: 60 to 80 mm is 1.5 to 1.8 times, a longer loaf hardly more', () => {
    const band = comeUpForThickness(100, 60, 80);
    expect(band?.leastMin).toBeGreaterThan(150);
    expect(band?.mostMin).toBeLessThan(180);
    const end = { when: 'core-reaches', tempC: 65, mostMin: 600 } as const;
    const minutes = (depthMm: number, lengthMm: number) =>
      simulate(loaf(depthMm, lengthMm), [airStage('steam', 80, end)], { tier: 'preview' })?.stages[0]
        ?.timeMin ?? 0;
    const [one, long] = [minutes(60, 290), minutes(60, 580)];
    expect(long / one).toBeLessThan(1.02);
  });
});

describe('chill', () => {
  /** Corners of a core's fall, logged every five minutes along straight lines. */
  const cool = (
    corners: readonly (readonly [min: number, tempC: number])[],
    heatEndMs: number | null = null,
  ) => {
    const readings = corners.flatMap(([min, tempC], i) => {
      const [nextMin, nextC] = corners[i + 1] ?? [min + 5, tempC];
      const steps = (nextMin - min) / 5;
      return Array.from({ length: steps }, (_, step) => ({
        atMs: (min + 5 * step) * MIN_MS,
        tempC: tempC + ((nextC - tempC) * step) / steps,
        counts: true,
      }));
    });
    return judgeCooling(readings, coolRuleSet('us-food-code')?.legs ?? [], {
      errorC: 0,
      offsetKnown: true,
      unitSuspect: false,
      heatEndMs,
    });
  };

  test('cooling is not the mirror of heating: in air it takes far longer than the bath took, and the tail from 12 to 5 °C is a third of it', () => {
    const heated = simulate(
      loaf(),
      [waterStage('poach', 80, 75, 60, { when: 'core-reaches', tempC: 70, mostMin: 600 })],
      {
        tier: 'preview',
      },
    );
    const chilled = simulate(
      { ...loaf(), startC: 70 },
      [airStage('refrigerate', 3, { when: 'core-falls', tempC: 5, mostMin: 3000 })],
      { tier: 'preview' },
    );
    const upMin = heated?.stages[0]?.timeMin ?? Number.NaN;
    const downMin = chilled?.stages[0]?.timeMin ?? Number.NaN;
    expect(downMin).toBeGreaterThan(2 * upMin);
    const hot = chilled?.hottestC ?? new Float64Array();
    const at12 = chilled?.timesMin[hot.findIndex((tempC) => tempC <= 12)] ?? Number.NaN;
    expect((downMin - at12) / downMin).toBeGreaterThan(1 / 3);
  });

  test('the clock starts at the last hotter evidence: a log that begins below the start temperature counts from the end of heating', () => {
    // FDA Food Code 3-501.14: 57 to 21 °C within 2 h, to 5 °C within 6 h. Heating ended at minute 0.
    const late = [
      [40, 50],
      [130, 20],
      [300, 4],
    ] as const;
    expect(cool(late, 0)[0]).toMatchObject({ worstMin: 130 });
    expect(cool(late, 0)[0]?.state).not.toBe('pass');
    expect(cool(late, 20 * MIN_MS)[0]?.state).toBe('pass');
    expect(cool(late, null)[0]?.state).toBe('cannot-tell');
  });

  test('legs are not averaged: a first leg too long fails though the whole is in time', () => {
    // 57 °C at minute 10, 21 at 160 instead of 130, and 5 at 215 where 370 are allowed.
    const slowThenFast = [
      [0, 80],
      [10, 57],
      [140, 30],
      [160, 20],
      [215, 4],
    ] as const;
    const [first, second] = cool(slowThenFast, 0);
    expect(first?.state).toBe('fail');
    expect(second?.state).toBe('pass');
  });

  test('a log over midnight and over a clock change runs on: stamps carry their zone, and no hours are negative', () => {
    const [before, after] = [instantMs('2026-03-10T23:50:00+01:00'), instantMs('2026-03-11T00:20:00+01:00')];
    expect(((after ?? 0) - (before ?? 0)) / MIN_MS).toBe(30);
    // Clocks go back at 03:00 CEST on 25 October 2026: 02:30 comes twice, an hour apart.
    const [first, second] = [instantMs('2026-10-25T02:30:00+02:00'), instantMs('2026-10-25T02:30:00+01:00')];
    expect(((second ?? 0) - (first ?? 0)) / MIN_MS).toBe(60);
    expect(instantMs('2026-10-25T02:30:00')).toBeNull();
  });

  test('a blank error or offset of the probe is unknown, so nothing passes', () => {
    const process = inventedProcess('countryTerrine', {
      cookRuleSetId: 'uk-advice',
      cookLimitId: 'uk-70C-2min',
      error: '',
    });
    expect(
      cookStage({ process }, { ...UNKNOWN_FACTS, hasPoultry: false, comminuted: true, hasPorkLiver: false })
        .verdicts[0],
    ).toMatchObject({
      state: 'cannot-tell',
      reason: 'cook.error-unknown',
    });
  });
});

import {
  afterDrying,
  DEGREE_HOUR_TABLES,
  type DryingSlice,
  degreeHourLimit,
  degreeHours,
  degreeHourTable,
  dryingStage,
  longestHours,
  lossForRatio,
  meetsClass,
  moistureProteinRatio,
  newDryingSlice,
  newFermentationStep,
  RATIO_CLASSES,
  TRICHINA_3A,
  TRICHINA_3B,
  TRICHINA_4,
  TRICHINA_SALT,
  trichinaDays,
  trichinaDrying,
  trichinaHoldPercent,
  trichinaSalt,
  trichinaSaltPercent,
  WATER_ACTIVITY_LIMITS,
} from '@larderwright/calc/drying';
import { convert, enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const inF = (degrees: number, hours: number) => ({ tempC: convert(degrees, 'F', 'C'), hours });

describe('tables against Trichinella, method 6', () => {
  // 9 CFR 318.10(c)(3)(i), annual edition of 2015, tables 3A, 3B and 4.
  test('are carried whole, with their spot values', () => {
    expect(TRICHINA_3A).toHaveLength(11);
    expect(TRICHINA_3A.at(0)).toEqual([1, 14]);
    expect(TRICHINA_3A.at(-1)).toEqual([6, 50]);
    expect(TRICHINA_3B.tempsF).toHaveLength(10);
    expect(TRICHINA_3B.rows.map(({ hours }) => hours)).toEqual([24, 48, 72, 96, 120]);
    for (const row of TRICHINA_3B.rows) expect(row.percent).toHaveLength(10);
    expect(trichinaHoldPercent(24, 70)).toBe(4);
    expect(trichinaHoldPercent(72, 90)).toBe(55);
    expect(trichinaHoldPercent(96, 95)).toBe(98);
    expect(TRICHINA_4).toHaveLength(14);
    expect(TRICHINA_4.at(0)).toEqual([3.3, 1]);
    expect(TRICHINA_4.at(-1)).toEqual([2, 40]);
    expect(TRICHINA_SALT.map(({ saltPercent }) => saltPercent)).toEqual([3.33, 2.5, 2.7, 4.5, 4, 6]);
  });

  test('never read between their rows toward danger', () => {
    expect(trichinaDays(3.01)).toBe(23);
    expect(trichinaDays(0.5)).toBe(14);
    expect(trichinaDays(6.1)).toBeNull();
    expect(trichinaHoldPercent(47.9, 84.9)).toBe(8);
    expect(trichinaHoldPercent(23, 120)).toBe(0);
    expect(trichinaHoldPercent(48, 69)).toBe(0);
    expect(trichinaHoldPercent(120, 115)).toBe(100);
  });

  test('salt is cut to a decimal, never rounded up; full salt adds nothing; too little is off the table', () => {
    expect(trichinaSalt(100, 5, 2.84)?.cutPercent).toBe(2.9);
    expect(trichinaSalt(100, 0, 2.99)).toBeNull();
    expect(trichinaSaltPercent({ percent: 3.33, cutPercent: 3.3 })).toBe(0);
    expect(trichinaSaltPercent({ percent: 3.32, cutPercent: 3.3 })).toBe(1);
    expect(trichinaSaltPercent({ percent: 1.99, cutPercent: 1.9 })).toBeNull();
    expect(trichinaSalt(Number.NaN, 5, 3)).toBeNull();
  });

  // 9 CFR 318.10, table 3B note: 20 days less 18 %, 3.6, cut to 3, is 17. Derived: 13 % of 20, 2.6, is 3 more.
  test('what comes off is cut down, what is added is counted up', () => {
    const hold = { hours: 48, tempF: 80 };
    expect(trichinaDrying({ casingIn: 3, hold, salt: null })).toEqual({
      tableDays: 20,
      offDays: 3,
      addedDays: 0,
      days: 17,
    });
    const salt = { percent: 2.93, cutPercent: 2.9 };
    expect(trichinaDrying({ casingIn: 3, hold: null, salt })?.days).toBe(23);
    expect(trichinaDrying({ casingIn: 3, hold, salt })?.days).toBe(20);
  });

  test('a longer or warmer hold never takes days on, a thicker casing never off', () => {
    const hold = fc.record({
      hours: fc.integer({ min: 0, max: 140 }),
      tempF: fc.integer({ min: 60, max: 130 }),
    });
    fc.assert(
      fc.property(hold, fc.double({ min: 0.5, max: 5.9, noNaN: true }), (of, casingIn) => {
        const days = (casing: number, more: number) =>
          trichinaDrying({
            casingIn: casing,
            hold: { hours: of.hours + more, tempF: of.tempF + more },
            salt: null,
          })?.days;
        expect(days(casingIn, 24)).toBeLessThanOrEqual(days(casingIn, 0) ?? Number.NaN);
        const none = (casing: number) => trichinaDrying({ casingIn: casing, hold: null, salt: null })?.days;
        expect(none(Math.min(6, casingIn + 0.5))).toBeGreaterThanOrEqual(none(casingIn) ?? Number.NaN);
      }),
    );
  });
});

describe('degree-hours', () => {
  // AMI good manufacturing practice and CFIA: limits from memory. 90 °F itself already takes 1000: its table gives 33 h.
  test('two tables, three bands each, the highest temperature sets the band', () => {
    expect(DEGREE_HOUR_TABLES.map(({ bands }) => bands.map(({ limit }) => limit))).toEqual([
      [1200, 1000, 900],
      [665, 555, 500],
    ]);
    expect(DEGREE_HOUR_TABLES.every(({ mark }) => mark === 'memory')).toBe(true);
    const us = degreeHourTable('us-fahrenheit');
    expect([89.9, 90, 100, 100.1].map((degrees) => degreeHourLimit(us, degrees))).toEqual([
      1200, 1000, 1000, 900,
    ]);
    const canada = degreeHourTable('canada-celsius');
    expect([32.9, 33, 37, 37.1].map((degrees) => degreeHourLimit(canada, degrees))).toEqual([
      665, 555, 555, 500,
    ]);
    // One hour at 105 °F sets 900 for the whole of it.
    expect(degreeHours('us-fahrenheit', [inF(75, 60), inF(105, 1)])).toMatchObject({
      limit: 900,
      isWithin: false,
    });
  });

  test('hours below the threshold count nothing and take nothing off', () => {
    const warm = degreeHours('us-fahrenheit', [inF(80, 55)]);
    expect(degreeHours('us-fahrenheit', [inF(80, 55), inF(40, 100)])?.total).toBeCloseTo(warm?.total ?? 0, 9);
    expect(longestHours('us-fahrenheit', 60)).toBeNull();
    expect(longestHours('us-fahrenheit', Number.NaN)).toBeNull();
  });

  test('another hour at any temperature never lowers the count nor raises the limit', () => {
    const stretch = fc.record({
      tempC: fc.double({ min: 0, max: 45, noNaN: true }),
      hours: fc.double({ min: 0, max: 80, noNaN: true }),
    });
    const rules = fc.constantFrom('us-fahrenheit', 'canada-celsius');
    fc.assert(
      fc.property(
        rules,
        fc.array(stretch, { minLength: 1, maxLength: 6 }),
        stretch,
        (rule, stretches, more) => {
          const before = degreeHours(rule, stretches);
          const after = degreeHours(rule, [...stretches, more]);
          expect(after?.total).toBeGreaterThanOrEqual((before?.total ?? 0) - 1e-9);
          expect(after?.limit).toBeLessThanOrEqual(before?.limit ?? 0);
        },
      ),
    );
  });

  test('nothing, and what is not a number, is unknown', () => {
    expect(degreeHours('us-fahrenheit', [])).toBeNull();
    expect(degreeHours('us-fahrenheit', [{ tempC: Number.NaN, hours: 1 }])).toBeNull();
    expect(degreeHours('us-fahrenheit', [{ tempC: 25, hours: -1 }])).toBeNull();
  });
});

describe('moisture to protein, and water activity', () => {
  // FSIS policy book in extracts: 0.75, 1.9, 3.1 with pH 5.0, 3.7; 1.6 and 2.3 from memory. AMI 1982: 2.3 with pH 5.3.
  test('seven classes, driest first, with their marks', () => {
    expect(RATIO_CLASSES.map(({ maxRatio, maxPh, mark }) => [maxRatio, maxPh, mark])).toEqual([
      [0.75, null, 'confirmed'],
      [1.6, null, 'memory'],
      [1.9, null, 'confirmed'],
      [2.3, null, 'memory'],
      [2.3, 5.3, 'confirmed'],
      [3.1, 5, 'confirmed'],
      [3.7, null, 'confirmed'],
    ]);
  });

  // Derived: 35 ÷ 20 = 1.75 passes 1.9 and fails 1.6.
  test('1.75 is a dry sausage and no pepperoni; a class with a pH needs the pH', () => {
    const meets = (id: string, ph: number | null) => {
      const of = RATIO_CLASSES.find((one) => one.id === id);
      return of && meetsClass(of, moistureProteinRatio(35, 20) ?? Number.NaN, ph);
    };
    expect(meets('dry-sausage', null)).toBe(true);
    expect(meets('pepperoni', null)).toBe(false);
    expect(meets('semi-dry-sausage', null)).toBeNull();
    expect(meets('semi-dry-sausage', 5)).toBe(true);
    expect(meets('semi-dry-sausage', 5.1)).toBe(false);
  });

  test('the loss asked for brings the ratio asked for', () => {
    const share = fc.double({ min: 0.1, max: 0.3, noNaN: true });
    fc.assert(
      fc.property(share, fc.double({ min: 0.5, max: 1.5, noNaN: true }), (protein, ratio) => {
        const loss = lossForRatio(0.6, protein, ratio);
        if (loss === null || loss === 0) return;
        expect(moistureProteinRatio(0.6 - loss, protein)).toBeCloseTo(ratio, 9);
      }),
    );
    expect(lossForRatio(0.3, 0.2, 1.9)).toBe(0);
    expect(lossForRatio(0.6, 0, 1.9)).toBeNull();
  });

  test('drying is never wetter, and ends where the water ends', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.4, noNaN: true }), (loss) => {
        const now = afterDrying(0.028, 0.58, loss);
        const later = afterDrying(0.028, 0.58, loss + 0.01);
        expect(later?.waterPhaseFraction).toBeGreaterThan(now?.waterPhaseFraction ?? 1);
        expect(later?.waterActivity?.high).toBeLessThan(now?.waterActivity?.high ?? 0);
      }),
    );
    expect(afterDrying(0.028, 0.58, 0.58)).toBeNull();
    expect(afterDrying(Number.NaN, 0.58, 0.1)).toBeNull();
    // Beyond saturation no activity is estimated.
    expect(afterDrying(0.05, 0.58, 0.5)?.waterActivity).toBeNull();
  });

  // 9 CFR 317.17(c) and 319.106: 0.92. Bad Bug Book: least for growth. FSIS training text: usual products.
  test('twelve limits of water activity: two rules, seven of growth, three usual', () => {
    const of = (group: string) => WATER_ACTIVITY_LIMITS.filter((one) => one.group === group);
    expect(of('rule').map(({ high }) => high)).toEqual([0.92, 0.92]);
    expect(of('growth').map(({ low }) => low)).toEqual([0.965, 0.95, 0.95, 0.93, 0.93, 0.92, 0.86]);
    expect(of('usual').map(({ low, high }) => [low, high])).toEqual([
      [0.95, 0.97],
      [0.85, 0.93],
      [null, 0.88],
    ]);
  });
});

describe('the drying of a batch', () => {
  const step = (temp: string, hours: string) => ({
    ...newFermentationStep(temp),
    temp: enteredEntry(temp, 'C'),
    hours: enteredEntry(hours, 'h'),
  });
  const sausage = (changes: Partial<DryingSlice> = {}): DryingSlice => ({
    ...newDryingSlice(),
    kind: 'fermented-sausage',
    start: enteredEntry('1000', 'g'),
    now: enteredEntry('650', 'g'),
    lossTarget: enteredEntry('40', '%'),
    startSalt: enteredEntry('2.8', '%'),
    startMoisture: enteredEntry('58', '%'),
    startProtein: enteredEntry('16', '%'),
    degreeHourRule: 'canada-celsius',
    steps: [step('24', '10'), step('30', '10'), step('35', '15')],
    reachedPh53: true,
    ...changes,
  });
  const run = (changes: Partial<DryingSlice> = {}) => {
    const result = dryingStage(sausage(changes));
    return {
      ...result,
      verdict: (id: string) => result.verdicts.find((one) => one.id === `drying.${id}`),
      ids: result.findings.map(({ id }) => id),
    };
  };

  test('the stop that an accepted plan is needed stands whatever the figures and whatever plan is named', () => {
    for (const changes of [
      {},
      { approvedPlan: 'HP 7' },
      { waterActivity: '0.80' },
      { kind: 'dried-muscle' as const },
    ]) {
      const of = run(changes);
      expect(of.findings.find(({ id }) => id === 'drying.approved-plan')?.severity).toBe('stop');
      expect(of.verdict('plan')).toMatchObject({ state: 'cannot-tell', reason: 'drying.approved-plan' });
    }
  });

  test('loss, weight to reach, and estimates follow from what was typed', () => {
    const { values } = run();
    expect(values.lossFraction).toBeCloseTo(0.35, 12);
    expect(values.targetMassG).toBe(600);
    expect(values.toLoseG).toBe(50);
    // Derived: 2.8 ÷ (2.8 + 23) = 10.85 %, 0.929 by the quadratic.
    expect(values.now?.waterPhaseFraction).toBeCloseTo(0.10853, 5);
    expect(values.now?.waterActivity?.quadratic).toBeCloseTo(0.9287, 3);
    expect(values.estimatedRatio).toBeCloseTo(0.23 / 0.16, 9);
  });

  // CFIA example: 519 of 555 (limit from memory).
  test('degree-hours pass only once pH 5.3 is reached, and fail at once when over', () => {
    expect(run().verdict('degree-hours')).toMatchObject({ state: 'pass', mark: 'memory' });
    expect(run({ reachedPh53: false }).verdict('degree-hours')?.state).toBe('cannot-tell');
    expect(run({ reachedPh53: null }).verdict('degree-hours')?.state).toBe('cannot-tell');
    const over = run({ steps: [step('35', '30')], reachedPh53: null });
    expect(over.verdict('degree-hours')?.state).toBe('fail');
    expect(over.findings.find(({ id }) => id === 'drying.hold-product')?.severity).toBe('stop');
  });

  test('a stretch that is not complete is unknown and not left out', () => {
    expect(run({ steps: [step('24', '10'), step('35', '')] }).verdict('degree-hours')?.state).toBe(
      'cannot-tell',
    );
    expect(run({ steps: [] }).verdict('degree-hours')?.state).toBe('cannot-tell');
    expect(run({ degreeHourRule: null }).verdict('degree-hours')?.state).toBe('cannot-tell');
  });

  test('only a measured water activity is set beside the limits', () => {
    expect(run().values.waterActivityRows.every(({ isBelow }) => isBelow === null)).toBe(true);
    expect(run().ids).toContain('drying.estimate-is-wet');
    const rows = run({ waterActivity: '0.90' }).values.waterActivityRows;
    expect(rows.find(({ limit }) => limit.id === 'country-ham')?.isBelow).toBe(true);
    expect(rows.find(({ limit }) => limit.id === 'staphylococcus')?.isBelow).toBe(false);
    // At the least for growth it still grows.
    const edge = run({ waterActivity: '0.92' }).values.waterActivityRows;
    expect(edge.find(({ limit }) => limit.id === 'listeria')?.isBelow).toBe(false);
  });

  test.each(['', '92', '0.4', '1.2', '-0.9', '0.9 %', 'NaN', '1e-1'])(
    'a water activity of "%s" is not taken',
    (text) => {
      expect(run({ waterActivity: text }).values.measuredWaterActivity).toBeNull();
      expect(run({ ph: text === '' ? '' : '15' }).values.ph).toBeNull();
    },
  );

  test('days against Trichinella need the salt of the mix', () => {
    const trichina = {
      ...newDryingSlice().trichina,
      casing: enteredEntry('3', 'in'),
      holdTemp: enteredEntry('80', 'F'),
      holdHours: enteredEntry('48', 'h'),
    };
    expect(run({ trichina }).values.trichina).toBeNull();
    const salted = {
      ...trichina,
      total: enteredEntry('127.872', 'lb'),
      dryIngredients: enteredEntry('6.372', 'lb'),
      salt: enteredEntry('3.56', 'lb'),
    };
    expect(run({ trichina: salted }).values.trichina).toEqual({
      tableDays: 20,
      offDays: 3,
      addedDays: 3,
      days: 20,
    });
    const wide = run({ trichina: { ...salted, casing: enteredEntry('7', 'in') } });
    expect(wide.ids).toContain('drying.casing-over-table');
    const bland = run({ trichina: { ...salted, salt: enteredEntry('1', 'lb') } });
    expect(bland.ids).toContain('drying.salt-under-table');
  });

  test('where nothing is dried nothing is said', () => {
    const { findings, verdicts, missing } = dryingStage(newDryingSlice());
    expect([findings, verdicts, missing]).toEqual([[], [], []]);
  });
});

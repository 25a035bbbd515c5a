import {
  applicableLimits,
  COOK_RULE_SETS,
  type CookFacts,
  type CookLimit,
  cookLimit,
  cookRuleSet,
  isByFat,
  lookUpHold,
  PARASITE_TABLES,
  resolveLimit,
  thresholdC,
  UNKNOWN_FACTS,
} from '@larderwright/calc/lethality';
import { convert } from '@larderwright/calc/quantities';
import { isSourceId } from '@larderwright/calc/sources';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import printed from '../../fixtures/cooking-tables.json' with { type: 'json' };
import { listsItsChecks, published } from '../../tools/published.ts';

const meat: CookFacts = { ...UNKNOWN_FACTS, hasPoultry: false, fatFraction: 0.25, comminuted: true };
const bird = (fatFraction: number | null, poultryKind: CookFacts['poultryKind'] = 'other'): CookFacts => ({
  ...UNKNOWN_FACTS,
  hasPoultry: true,
  poultryKind,
  fatFraction,
});

function limitOf(setId: string, limitId: string): CookLimit {
  const limit = cookLimit(cookRuleSet(setId), limitId);
  if (!limit) throw new Error(`${setId} ${limitId}`);
  return limit;
}

function holdOf(limit: CookLimit, facts: CookFacts) {
  const resolved = resolveLimit(limit, facts);
  return resolved.ok ? resolved.hold.s : resolved.reason;
}

/** Counts the rows of a printed table that stand in ours with the same hold, and keeps the count for the page. */
function rowsAlike<Row>(
  what: string,
  sourceId: string,
  cited: string,
  rows: readonly Row[],
  alike: (row: Row) => boolean,
) {
  const ours = rows.filter(alike).length;
  published({ what, sourceId, cited, kind: 'printed', theirs: rows.length, ours, unit: 'rows', within: 0 });
}

const holdSOf = (setId: string, limitId: string) => {
  const { hold } = limitOf(setId, limitId);
  return isByFat(hold) ? null : hold.s;
};

describe('cooking tables, row by row as printed', () => {
  it('carries all 31 rows of both meat columns', () => {
    // FSIS Appendix A (1999), carried into Revised Appendix A (2021), meat table
    const rows = printed.fsis_meat_6_5_and_7_log.rows;
    expect(rows).toHaveLength(31);
    for (const row of rows) {
      expect(limitOf('us-fsis-meat-6.5', `fsis-${row.temp_F}F`)).toMatchObject({
        printedC: row.temp_C_printed,
        hold: { s: row.time_6_5_log_s },
      });
      expect(limitOf('us-fsis-meat-7.0', `fsis7-${row.temp_F}F`)).toMatchObject({
        hold: { s: row.time_7_0_log_s },
      });
      expect(limitOf('ca-meat', `ca-${row.temp_C_printed.toFixed(1)}C`).hold).toMatchObject({
        s: row.time_6_5_log_s,
      });
    }
    const cited = 'FSIS Appendix A (1999), meat table';
    rowsAlike('Meat, holds for 6.5 log, row by row', 'fsis-cooking-meat', cited, rows, (row) =>
      Object.is(holdSOf('us-fsis-meat-6.5', `fsis-${row.temp_F}F`), row.time_6_5_log_s),
    );
    rowsAlike('Meat, holds for 7 log, row by row', 'fsis-cooking-meat', cited, rows, (row) =>
      Object.is(holdSOf('us-fsis-meat-7.0', `fsis7-${row.temp_F}F`), row.time_7_0_log_s),
    );
  });

  it('carries the chicken grid by fat', () => {
    // FSIS poultry tables (2005), reprinted by CFIA and Ontario
    for (const row of printed.fsis_chicken_7_log_fat_grid.rows)
      for (const [fat, minutes] of Object.entries(row.minutes_by_fat_pct))
        expect(
          holdOf(limitOf('us-fsis-poultry', `fsis-poultry-${row.temp_F}F`), bird(Number(fat) / 100)),
        ).toBeCloseTo(minutes * 60, 9);
    rowsAlike(
      'Chicken, holds by fat, row by row',
      'fsis-cooking-poultry',
      'FSIS poultry tables (2005)',
      printed.fsis_chicken_7_log_fat_grid.rows,
      (row) =>
        Object.entries(row.minutes_by_fat_pct).every(([fat, minutes]) => {
          const heldS = holdOf(
            limitOf('us-fsis-poultry', `fsis-poultry-${row.temp_F}F`),
            bird(Number(fat) / 100),
          );
          return Math.abs(Number(heldS) - minutes * 60) < 1e-9;
        }),
    );
  });

  it('carries chicken and turkey at 12 % fat, and reads "<10 s" as reached', () => {
    for (const row of printed.fsis_poultry_7_log_fat12.rows) {
      const limit = limitOf('us-fsis-poultry', `fsis-poultry-${row.temp_F}F`);
      expect(holdOf(limit, bird(0.12, 'other'))).toBeCloseTo(row.chicken_s ?? 0, 9);
      expect(holdOf(limit, bird(0.12, 'turkey'))).toBeCloseTo(row.turkey_s ?? 0, 9);
      expect(holdOf(limit, bird(0.12, 'both'))).toBeCloseTo(
        Math.max(row.chicken_s ?? 0, row.turkey_s ?? 0),
        9,
      );
      expect(holdOf(limit, bird(0.12, null))).toBeCloseTo(Math.max(row.chicken_s ?? 0, row.turkey_s ?? 0), 9);
    }
  });

  it('carries the lean points, but for the one that asks less of more fat', () => {
    // Turkey at 150 °F prints 3.8 min for 1 % and 3.7 min for 5 %: the 5 % row is not read, 12 % is
    for (const row of printed.fsis_poultry_7_log_lean_points.rows) {
      const doubtful = row.species === 'turkey' && row.fat_pct === 5 && row.temp_F === 150;
      const held = holdOf(
        limitOf('us-fsis-poultry', `fsis-poultry-${row.temp_F}F`),
        bird(row.fat_pct / 100, row.species === 'turkey' ? 'turkey' : 'other'),
      );
      expect(held).toBeCloseTo(doubtful ? 294 : (row.time_s ?? 0), 9);
    }
  });

  it('carries the Food Code: roasts, and its own pairs of scales', () => {
    for (const row of printed.foodcode_roasts.rows)
      expect(limitOf('us-food-code', `fc-roast-${row.temp_F}F`)).toMatchObject({
        hold: { s: row.time_s },
        printedC: row.temp_C,
      });
    rowsAlike(
      'Whole roasts, row by row',
      'food-code-cooking',
      'Food Code, 3-401.11(B)(2)',
      printed.foodcode_roasts.rows,
      (row) => Object.is(holdSOf('us-food-code', `fc-roast-${row.temp_F}F`), row.time_s),
    );
    // Food Code 2022, 3-401.11: 145 °F (63 °C), 150 (66), 155 (68), 158 (70), 165 (74)
    expect(
      ['fc-145F', 'fc-145F-3min', 'fc-150F-1min', 'fc-155F', 'fc-158F', 'fc-165F'].map((id) => {
        const { stated, hold } = limitOf('us-food-code', id);
        return [stated.value, stated.published, isByFat(hold) ? null : hold.printed];
      }),
    ).toEqual([
      [145, 63, '15 s'],
      [145, 63, '3 min'],
      [150, 66, '1 min'],
      [155, 68, '17 s'],
      [158, 70, '<1 s'],
      [165, 74, '<1 s'],
    ]);
  });

  it('carries the Celsius cards', () => {
    // FSA pairs equal to 70 °C for 2 min
    const uk = cookRuleSet('uk-advice')?.limits.map(({ stated, hold }) => [
      stated.value,
      isByFat(hold) ? 0 : hold.s / 60,
    ]);
    expect(uk).toEqual(printed.uk_fsa_70_2.rows.map((row) => [row.temp_C, row.time_min]));
    rowsAlike(
      'Pairs equal to 70 °C for 2 min, one by one',
      'fsa-70-2',
      'Food Standards Agency, cooking food safely',
      printed.uk_fsa_70_2.rows,
      (row) => uk?.some(([tempC, minutes]) => tempC === row.temp_C && minutes === row.time_min) ?? false,
    );
    // ACMSF 2007: 65 °C 13.6 min, 70 °C 2 min, 75 °C 18 s
    for (const row of printed.uk_acmsf_2007_burgers.rows) {
      const limit = cookRuleSet('uk-acmsf-2007')?.limits.find(({ stated }) => stated.value === row.temp_C);
      expect(limit?.hold).toMatchObject({ printed: row.time });
    }
    // NZ MPI card: 65 °C 15 min, 70 °C 3 min, 75 °C 30 s
    const nz = cookRuleSet('nz-card')?.limits.map(({ stated, hold }) => [
      stated.value,
      isByFat(hold) ? 0 : hold.s,
    ]);
    expect(nz).toEqual([
      [65, 900],
      [70, 180],
      [75, 30],
    ]);
    expect(limitOf('hev-advisory', 'hev-71C-20min').hold).toMatchObject({ s: 1200 });
    expect(limitOf('au-as4696', 'au-65C-10min').hold).toMatchObject({ s: 600 });
    expect(limitOf('ie-cook-chill', 'ie-75C-0s').hold).toMatchObject({ s: 0 });
  });

  it('carries 90 °C for 10 minutes and both lines of equivalents', () => {
    for (const row of printed.nonproteolytic_cbot_6log.rows) {
      expect(limitOf('uk-90c-10min', `np-${row.temp_C}C`).hold).toMatchObject({
        s: Math.round(row.minutes_uk * 60),
      });
      const us = limitOf('us-90c-10min', `np-us-${row.temp_C}C`).hold;
      // derived column, rounded up to a tenth of a minute
      const minutes = isByFat(us) ? 0 : us.s / 60;
      expect(minutes).toBeGreaterThanOrEqual(row.minutes_fda_z7_z10_derived - 0.06);
      expect(minutes - row.minutes_fda_z7_z10_derived).toBeLessThan(0.16);
    }
  });

  it('carries the parasite tables, apart from the cooking limits', () => {
    const rowsOf = (id: string) => PARASITE_TABLES.find((table) => table.id === id)?.rows ?? [];
    const heat = printed.trichinella_heat_318_10.rows;
    expect(rowsOf('trichinella-heat').map((row) => [row.tempF, row.tempC, row.time])).toEqual(
      heat.map((row) => [row.temp_F, row.temp_C_printed, row.time.replace('instant', 'reached')]),
    );
    expect(rowsOf('trichinella-freezing-centre').map((row) => [row.tempF, row.tempC, row.time])).toEqual(
      printed.trichinella_freeze_internal.rows.map((row) => [row.temp_F, row.temp_C, `${row.hours} h`]),
    );
    expect(rowsOf('trichinella-freezing-eu-3').map((row) => [row.tempC, row.time])).toEqual(
      printed.trichinella_eu_2015_1375_method3.rows.map((row) => [row.temp_C, `${row.hours} h`]),
    );
    const groups = printed.trichinella_freeze_groups.rows;
    expect(rowsOf('trichinella-freezing-pieces').map((row) => [row.tempC, row.time])).toEqual([
      ...groups.map((row) => [row.temp_C, `${row.group1_days} days`]),
      ...groups.map((row) => [row.temp_C, `${row.group2_days} days`]),
    ]);
    const pairs = new Set(COOK_RULE_SETS.flatMap((set) => set.limits.map(({ id }) => id)));
    expect([...pairs].some((id) => id.includes('trichinella'))).toBe(false);
  });
});

describe('rule sets', () => {
  it('names each set and each limit once, with sources that exist', () => {
    const ids = COOK_RULE_SETS.flatMap((set) => [set.id, ...set.limits.map(({ id }) => id)]);
    expect(new Set(ids).size).toBe(ids.length);
    for (const set of COOK_RULE_SETS) {
      expect(set.sources.every(isSourceId)).toBe(true);
      expect(set.limits.every(({ source }) => isSourceId(source))).toBe(true);
      expect(set.limits.length).toBeGreaterThan(0);
    }
  });

  it('never asks less of a cooler hold where a table is whole', () => {
    for (const set of COOK_RULE_SETS)
      for (const facts of [
        { ...meat, comminuted: false },
        bird(0.12),
        bird(0.12, 'turkey'),
        bird(0.12, 'both'),
      ])
        for (const form of ['any', 'comminuted', 'intact', 'whole-roast']) {
          const rows = applicableLimits(set, facts).filter(({ limit }) => limit.form === form);
          const sorted = rows.toSorted(
            (a, b) =>
              thresholdC(a.limit.stated, 'C') - thresholdC(b.limit.stated, 'C') || b.hold.s - a.hold.s,
          );
          const holds = sorted.map(({ hold }) => hold.s);
          expect(holds, `${set.id} ${form}`).toEqual(holds.toSorted((a, b) => b - a));
        }
  });
});

describe('resolveLimit', () => {
  it('lets a poultry liver in the mix make it poultry', () => {
    // Food Code 3-401.11(A)(3); FSIS: not the meat columns for poultry
    for (const [setId, id] of [
      ['us-food-code', 'fc-155F'],
      ['us-fsis-meat-6.5', 'fsis-155F'],
      ['us-fsis-meat-7.0', 'fsis7-155F'],
      ['ca-meat', 'ca-68.3C'],
    ] as const)
      expect(resolveLimit(limitOf(setId, id), bird(0.1))).toEqual({
        ok: false,
        state: 'fail',
        reason: 'cook.limit-not-for-poultry',
      });
    expect(holdOf(limitOf('us-food-code', 'fc-165F'), bird(0.1))).toBe(0);
    expect(holdOf(limitOf('nz-card', 'nz-70C-3min'), bird(0.32))).toBe(180);
    expect(holdOf(limitOf('uk-advice', 'uk-70C-2min'), bird(0.32))).toBe(120);
    expect(holdOf(limitOf('uk-acmsf-2007', 'acmsf-75C-18s'), bird(0.32))).toBe('cook.limit-not-for-poultry');
  });

  it('cannot tell while a species is unknown', () => {
    expect(holdOf(limitOf('us-food-code', 'fc-155F'), UNKNOWN_FACTS)).toBe('cook.species-unknown');
    expect(holdOf(limitOf('us-fsis-poultry', 'fsis-poultry-155F'), UNKNOWN_FACTS)).toBe(
      'cook.species-unknown',
    );
    expect(holdOf(limitOf('us-fsis-poultry', 'fsis-poultry-155F'), meat)).toBe('cook.limit-for-poultry-only');
  });

  it('has no column above 12 % fat, and reads the next higher one below', () => {
    const limit = limitOf('us-fsis-poultry', 'fsis-poultry-140F');
    expect(holdOf(limit, bird(0.1201))).toBe('cook.fat-off-table');
    expect(holdOf(limit, bird(0.32))).toBe('cook.fat-off-table');
    expect(holdOf(limit, bird(null))).toBe('cook.fat-unknown');
    expect(holdOf(limit, bird(Number.NaN))).toBe('cook.fat-unknown');
    expect(holdOf(limit, bird(0.064))).toBeCloseTo(29.0 * 60, 9);
    expect(holdOf(limit, bird(0.07))).toBeCloseTo(29.0 * 60, 9);
    // 145 °F knows 1, 5 and 12 % only: 6 % is read at 12 %
    expect(holdOf(limitOf('us-fsis-poultry', 'fsis-poultry-145F'), bird(0.06))).toBe(780);
  });

  it('keeps pairs for whole meat from minced meat', () => {
    expect(holdOf(limitOf('us-food-code', 'fc-145F'), meat)).toBe('cook.limit-not-for-minced');
    expect(holdOf(limitOf('us-food-code', 'fc-roast-130F'), meat)).toBe('cook.limit-not-for-minced');
    expect(holdOf(limitOf('us-food-code', 'fc-roast-130F'), { ...meat, comminuted: null })).toBe(
      'cook.form-unknown',
    );
    expect(holdOf(limitOf('us-food-code', 'fc-roast-130F'), { ...meat, comminuted: false })).toBe(6720);
    expect(holdOf(limitOf('us-food-code', 'fc-155F'), { ...meat, comminuted: false })).toBe(17);
    // Food Code 3-401.11(A)(2): injected meat takes the row of minced meat; roasts have their own chart
    expect(holdOf(limitOf('us-food-code', 'fc-145F'), { ...meat, comminuted: false })).toBe(
      'cook.form-unknown',
    );
    expect(holdOf(limitOf('us-food-code', 'fc-145F'), { ...meat, comminuted: false, injected: true })).toBe(
      'cook.limit-not-for-minced',
    );
    expect(holdOf(limitOf('us-food-code', 'fc-145F'), { ...meat, comminuted: false, injected: false })).toBe(
      15,
    );
  });
});

describe('thresholdC', () => {
  it('holds a probe to the rule’s own figure on its scale, else to the exact conversion', () => {
    expect(thresholdC({ value: 155, unit: 'F', published: 68 }, 'C')).toBe(68);
    expect(thresholdC({ value: 155, unit: 'F', published: 68 }, 'F')).toBe(convert(155, 'F', 'C'));
    expect(thresholdC({ value: 155, unit: 'F' }, 'C')).toBe(convert(155, 'F', 'C'));
    expect(thresholdC({ value: 70, unit: 'C' }, 'F')).toBe(70);
  });
});

describe('lookUpHold', () => {
  const table = cookRuleSet('us-fsis-meat-6.5');
  it('reads the row at or below, never one above and nothing in between', () => {
    if (!table) throw new Error('no table');
    expect(lookUpHold(table, convert(155, 'F', 'C'), meat)?.limit.id).toBe('fsis-155F');
    expect(lookUpHold(table, convert(155.9, 'F', 'C'), meat)?.limit.id).toBe('fsis-155F');
    expect(lookUpHold(table, convert(154.9, 'F', 'C'), meat)?.limit.id).toBe('fsis-154F');
    expect(lookUpHold(table, 95, meat)?.hold.s).toBe(0);
    expect(lookUpHold(table, 95, meat)?.limit.id).toBe('fsis-160F');
    expect(lookUpHold(table, 54.4, meat)).toBeNull();
    expect(lookUpHold(table, 65, bird(0.1))).toBeNull();
    expect(lookUpHold(table, Number.NaN, meat)).toBeNull();
  });

  it('never asks less than the row below a hotter reading would', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 50, max: 80, noNaN: true }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        (tempC, more) => {
          if (!table) throw new Error('no table');
          const cooler = lookUpHold(table, tempC, meat);
          const hotter = lookUpHold(table, tempC + more, meat);
          if (cooler) expect(hotter?.hold.s).toBeLessThanOrEqual(cooler.hold.s);
          if (cooler) expect(thresholdC(cooler.limit.stated, 'C')).toBeLessThanOrEqual(tempC);
        },
      ),
    );
  });
});

listsItsChecks('cooking-tables');

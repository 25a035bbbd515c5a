import { assess, type Batch, newBatch } from '@larderwright/calc/batch';
import { loadIngredients } from '@larderwright/calc/ingredients';
import type { CheckedReading } from '@larderwright/calc/probe-log';
import { blankEntry, defaultEntry, enteredEntry } from '@larderwright/calc/quantities';
import { beforeAll, describe, expect, it } from 'vitest';
import { demos } from '../../../content/demo/index.ts';
import { decisive, STRIP } from '../../../worksheets/batch-sheet/build/decisive.ts';
import { filled, worked } from '../../../worksheets/batch-sheet/build/filled.ts';
import { loadCompute, type SheetComputed } from '../../../worksheets/batch-sheet/compute.ts';

let compute: (batch: Batch) => SheetComputed;
beforeAll(async () => {
  compute = await loadCompute();
});
const demo = (slug: string): Batch => structuredClone(demos[slug] ?? newBatch({ id: '', at: '', zone: '' }));

describe('a printed input', () => {
  it('is flagged entered or default, with its unit', () => {
    expect(filled('length', enteredEntry('290', 'mm'), 'mm')).toEqual({ text: '290\u00A0mm', flag: 'E' });
    expect(filled('density', defaultEntry('1.04', 'g/mL'), 'g/mL')?.flag).toBe('D');
  });

  it('keeps every digit that was typed in the unit of the sheet', () => {
    expect(filled('mass', enteredEntry('5.40', 'g'), 'g', false)?.text).toBe('5.4');
    expect(filled('mass', enteredEntry('0.25', 'g'), 'g', false)?.text).toBe('0.25');
  });

  it('is a box to write in when blank, never a zero', () => {
    expect(filled('mass', blankEntry('g'), 'g')).toBeNull();
    expect(worked(null)).toBeNull();
  });

  it('prints what cannot be read as it was typed, with a question mark', () => {
    expect(filled('mass', enteredEntry('half a bag', 'g'), 'g')?.text).toBe('"half a bag" ?');
  });
});

describe('the readings that decide', () => {
  const log = (count: number): CheckedReading[] =>
    Array.from({ length: count }, (_, index) => ({
      id: String(index),
      index,
      at: '',
      atMs: index * 60_000,
      shown: String(index),
      unit: 'C' as const,
      tempC: index === 40 ? 99 : index,
      state: 'counts' as const,
      doubt: null,
      exclusion: null,
      exclusionIncomplete: false,
      enteredLateMin: null,
    }));

  it('are all of a short log', () => {
    expect(decisive(log(12), [])).toHaveLength(12);
  });

  it('are no more than a strip of a long one, in order: the moments and what stood before, ends and peak among them', () => {
    const chosen = decisive(log(500), [100 * 60_000, 300 * 60_000]).map(({ index }) => index);
    expect(chosen).toHaveLength(STRIP);
    expect(chosen).toEqual([...chosen].sort((a, b) => a - b));
    for (const wanted of [0, 99, 100, 299, 300, 40, 499]) {
      // 499 is the hottest but for the odd 99 °C of reading 40, which stays under it.
      if (wanted !== 40) expect(chosen).toContain(wanted);
    }
  });
});

describe('the sheet of a batch', () => {
  it('prints a fail as a stop in words, each once', () => {
    const { model } = compute(demo('pate-en-croute-cooling-fails'));
    expect(model.stops.length).toBeGreaterThan(1);
    expect(new Set(model.stops).size).toBe(model.stops.length);
    expect(model.stops.every((stop) => stop.startsWith('FAIL, hold, do not serve'))).toBe(true);
  });

  it('has no stop for a batch that passes', () => {
    expect(compute(demo('country-terrine')).model.stops).toEqual([]);
  });

  it('marks a limit from memory beside its verdict', () => {
    const batch = demo('country-terrine');
    batch.cure.ruleSetId = 'australia-new-zealand';
    const verdicts = compute(batch).model.cure?.verdicts ?? [];
    expect(verdicts.some(({ fromMemory }) => fromMemory)).toBe(true);
  });

  it('leaves the allergen box open when a line is unknown, and blank when there is no formula', () => {
    const batch = demo('country-terrine');
    const [first] = batch.formula.lines;
    if (first) first.ingredientId = null;
    expect(compute(batch).model.warnings.allergens).toMatch(/UNKNOWN for 1 line/);
    batch.formula.lines = [];
    expect(compute(batch).model.warnings.allergens).toBeNull();
  });

  it('prints late readings with both times, and left-out readings with reason and initials', () => {
    const batch = demo('country-terrine');
    const readings = batch.process.logs[0]?.readings ?? [];
    if (readings[3]) readings[3].enteredAt = '2026-03-10T10:00:00-04:00';
    if (readings[5])
      readings[5].excluded = { reason: 'probe slipped', initials: 'ab', at: '2026-03-10T10:00:00-04:00' };
    const { remarks } = compute(batch).model.cook;
    expect(remarks.join(' ')).toMatch(/read 09:25, typed 35 min later/);
    expect(remarks.join(' ')).toMatch(/09:55 45\.7 \(probe slipped, ab\)/);
  });

  it('adds up on paper: the total is the sum of the weights as printed, and mg/kg come from those weights', () => {
    const batch = demo('country-terrine');
    for (const line of batch.formula.lines) {
      if (line.id === 'venison')
        Object.assign(line, { basis: 'percent-of-meat', amount: enteredEntry('35.7', '%') });
      if (line.id === 'pork') line.amount = enteredEntry('1.5432 lb', 'lb');
      if (line.id === 'nutmeg') line.amount = enteredEntry('1.234', 'g');
    }
    const { model } = compute(batch);
    const { meats, others, seasonings, total, meatBlock } = model.materials;
    const grams = (text: string | undefined) => Number(text?.replace(/\s*g$/, ''));
    const sum = (rows: typeof meats) => rows.reduce((all, row) => all + grams(row.planned?.text), 0);
    const cure = grams(model.cure?.lines[0]?.grams?.text);
    expect(sum(meats) + sum(others) + sum(seasonings) + cure).toBeCloseTo(grams(total?.text), 6);
    expect(sum(meats)).toBeCloseTo(grams(meatBlock?.text), 6);
    // Derived: what the paper says of the cure, by the paper's own weights.
    const ppm = (cure * 62.5 * 1000) / sum(meats);
    const said = Number(/mg\/kg: ([\d.]+) on meat block/.exec(model.cure?.ppm ?? '')?.[1]);
    expect(said).toBeGreaterThanOrEqual(ppm - 1e-9);
    expect(said - ppm).toBeLessThan(0.1 + 1e-9);
  });

  it('states nothing for a batch that holds nothing', async () => {
    const empty = newBatch({ id: 'e', at: '2026-11-25T08:00:00Z', zone: 'UTC' });
    const { model } = compute(empty);
    expect(model.materials.meats).toEqual([]);
    expect(model.cure).toBeNull();
    expect(model.salt.total).toBeNull();
    const { verdicts } = assess(empty, { composition: await loadIngredients(), today: '2026-11-25' });
    expect(verdicts.some(({ state }) => state === 'pass')).toBe(false);
  });
});

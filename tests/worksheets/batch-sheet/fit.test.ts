import { describe, expect, it } from 'vitest';
import { BLANK_SHEET } from '../../../worksheets/batch-sheet/blank-model.ts';
import { BENCH_STEPS, materialsAt, RECORD_STEPS, recordAt } from '../../../worksheets/batch-sheet/fit.ts';
import type { MaterialRow, Materials, SheetModel } from '../../../worksheets/batch-sheet/sheet-model.ts';

const row = (name: string, grams: string, staysOnBench = false): MaterialRow => ({
  id: name,
  name,
  planned: { text: grams, flag: 'E' },
  limit: null,
  lot: null,
  actual: null,
  staysOnBench,
});

const materials: Materials = {
  ...BLANK_SHEET.materials,
  meats: [row('pork', '1000'), row('fat', '400')],
  others: [row('egg', '100'), row('salt', '24', true)],
  seasonings: [row('pepper', '3'), row('mace', '0.5')],
  seasoningTotal: '3.5',
};

describe('the bench copy, however tightly it is set', () => {
  it.each(BENCH_STEPS)('names every material once at the step "%s"', (step) => {
    const set = materialsAt(step, materials);
    const named = [...set.meats, ...set.others, ...set.onCard].map(({ name }) => name);
    const gathered = set.gathered?.gathered ?? '';
    for (const name of ['pork', 'fat', 'egg', 'salt', 'pepper', 'mace']) {
      expect(named.filter((each) => each === name).length + (gathered.includes(name) ? 1 : 0)).toBe(1);
    }
  });

  it('gathers the seasonings with the weight of each and of all', () => {
    expect(materialsAt('gathered', materials).gathered).toEqual({
      name: 'Seasoning, 2 lines',
      planned: { text: '3.5', flag: 'W' },
      gathered: 'pepper 3 · mace 0.5',
    });
  });

  it('gives no total of the seasonings when one of them is unknown', () => {
    const set = materialsAt('gathered', { ...materials, seasoningTotal: null });
    expect(set.gathered?.planned).toBeNull();
  });

  it('keeps meat and salt on the bench when the rest moves to a card', () => {
    const set = materialsAt('card', materials);
    expect(set.meats.map(({ name }) => name)).toEqual(['pork', 'fat']);
    expect(set.others.map(({ name }) => name)).toEqual(['salt']);
    expect(set.onCard.map(({ name }) => name)).toEqual(['egg', 'pepper', 'mace']);
  });
});

describe('the record copy, however tightly it is set', () => {
  const log = (name: string) => ({
    name,
    probe: '',
    offset: null,
    error: null,
    count: 0,
    readings: [],
  });
  const model: SheetModel = {
    ...BLANK_SHEET,
    cook: { ...BLANK_SHEET.cook, logs: [log('worst'), log('other')], remarks: ['late'] },
    cool: { ...BLANK_SHEET.cool, logs: [log('worst'), log('other')] },
    deviations: [{ id: 'd', text: 'discarded' }],
  };

  it.each(RECORD_STEPS)('keeps the verdicts and the ruling log at the step "%s"', (step) => {
    const set = recordAt(step, model);
    expect(set.cook.verdicts).toBe(model.cook.verdicts);
    expect(set.cool.legs).toBe(model.cool.legs);
    expect(set.cook.logs[0]?.name).toBe('worst');
  });

  it('moves deviations and remarks off the page only in the last step', () => {
    expect(recordAt('ruling-log', model).deviations).toHaveLength(1);
    expect(recordAt('notes-apart', model).deviations).toEqual([]);
    expect(recordAt('notes-apart', model).cook.remarks).toEqual([]);
  });
});

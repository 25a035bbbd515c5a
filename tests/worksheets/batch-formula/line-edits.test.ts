import { newLine } from '@larderwright/calc/batch';
import type { FormulaLine } from '@larderwright/calc/formula';
import { loadPickList, type PickItem } from '@larderwright/calc/ingredients';
import { enteredEntry } from '@larderwright/calc/quantities';
import { beforeAll, describe, expect, test } from 'vitest';
import {
  amountIn,
  isCuringSalt,
  pickable,
  sameName,
  usualPart,
  withAmountIn,
  withIngredient,
  withName,
  withPart,
} from '../../../worksheets/batch-formula/line-edits.ts';

let list: readonly PickItem[] = [];
beforeAll(async () => {
  list = await loadPickList();
});
const item = (id: string): PickItem => {
  const found = list.find((one) => one.id === id);
  if (!found) throw new Error(`No ${id} in the list`);
  return found;
};
const typed = (text: string, unit: 'g' | 'kg' | '%' = 'g'): FormulaLine => ({
  ...newLine('l1', 'lean'),
  amount: enteredEntry(text, unit),
});

describe('a line becomes a curing salt', () => {
  // Curing salt in grams only, strength from the pack and no default: house rule of this project.
  test('with a weight in grams and a strength that nobody has read yet', () => {
    const line = withPart(typed('2', 'kg'), 'curing-salt');
    expect(line.amount).toEqual(enteredEntry('2', 'g'));
    expect(line.basis).toBe('mass');
    expect(line.cure?.nitrite.text).toBe('');
    expect(line.cure?.nitrate.text).toBe('');
  });

  test('out of a share of the meat, which it may never be', () => {
    const line = withPart(withAmountIn(typed('0.2'), 'percent-of-meat'), 'curing-salt');
    expect(line.basis).toBe('mass');
    expect(line.amount.unit).toBe('g');
  });

  test('and takes no figures from the table', () => {
    const line = withPart({ ...typed('5'), ingredientId: 'salt' }, 'curing-salt');
    expect(line.ingredientId).toBeNull();
  });

  test('and has its typed strength again after a slip of the part', () => {
    const cure = { nitrite: enteredEntry('6.25', '%'), nitrate: enteredEntry('0', '%') };
    const before = { ...withPart(typed('5'), 'curing-salt'), cure };
    const slipped = withPart(before, 'seasoning');
    expect(slipped.cure).toBeNull();
    expect(withPart(slipped, 'curing-salt', cure).cure).toEqual(cure);
  });
});

describe('picking an ingredient', () => {
  test('fills name and figures and puts the line in its usual part', () => {
    const line = withIngredient(newLine('l1', 'lean'), item('kitchen-pork-liver'), false);
    expect(line).toMatchObject({
      name: 'Pork liver, trimmed',
      ingredientId: 'kitchen-pork-liver',
      part: 'liver',
    });
  });

  test('leaves the part alone that a person chose', () => {
    const line = withIngredient(newLine('l1', 'garnish'), item('kitchen-chicken-breast'), true);
    expect(line.part).toBe('garnish');
  });

  test('of curing salt makes the line one, whatever part was chosen, and copies no strength', () => {
    const curingSalts = list.filter(isCuringSalt);
    expect(curingSalts.length).toBeGreaterThan(0);
    for (const curing of curingSalts) {
      const line = withIngredient(newLine('l1', 'seasoning'), curing, true);
      expect(line).toMatchObject({ part: 'curing-salt', name: 'Curing salt', ingredientId: null });
      expect(line.cure?.nitrite.text).toBe('');
    }
  });

  test('of anything else takes the line out of the curing salts', () => {
    const line = withIngredient(newLine('l1', 'curing-salt'), item('salt'), true);
    expect(line).toMatchObject({ part: 'salt', cure: null });
  });

  test('never offers pure nitrite or nitrate', () => {
    const offered = pickable(list).map(({ id }) => id);
    for (const pure of ['sodium-nitrite', 'sodium-nitrate', 'potassium-nitrate']) {
      expect(list.some(({ id }) => id === pure)).toBe(true);
      expect(offered).not.toContain(pure);
    }
  });
});

describe('the usual part', () => {
  test.each([
    ['kitchen-venison-shoulder', 'lean'],
    ['kitchen-trout', 'lean'],
    ['kitchen-pork-backfat', 'fat'],
    ['kitchen-butter-unsalted', 'fat'],
    ['kitchen-chicken-liver', 'liver'],
    ['kitchen-egg', 'egg'],
    ['kitchen-cream-35', 'liquid'],
    ['kitchen-brandy', 'liquid'],
    ['kitchen-bread-white', 'panade'],
    ['kitchen-bacon-dry-cured', 'garnish'],
    ['kitchen-chestnut-roasted', 'garnish'],
    ['pepper-black', 'seasoning'],
    ['salt', 'salt'],
  ])('of %s is %s', (id, part) => expect(usualPart(item(id))).toBe(part));
});

describe('writing another name over a picked one', () => {
  test('drops its figures: chicken liver must not keep the figures of pork', () => {
    const pork = withIngredient(newLine('l1', 'lean'), item('kitchen-pork-liver'), false);
    expect(withName(pork, 'Chicken liver')).toMatchObject({ name: 'Chicken liver', ingredientId: null });
  });

  test('is no change when the name is the same', () => {
    const pork = withIngredient(newLine('l1', 'lean'), item('kitchen-pork-liver'), false);
    expect(withName(pork, pork.name)).toBe(pork);
  });

  test('finds the row again by its exact name only', () => {
    expect(sameName(list, ' pork liver, TRIMMED ')?.id).toBe('kitchen-pork-liver');
    expect(sameName(list, 'pork liver, trim')).toBeNull();
    expect(sameName(list, '')).toBeNull();
  });
});

describe('what an amount is written in', () => {
  test.each(['g', 'kg', 'oz', 'lb', 'percent-of-meat', 'percent-of-total'] as const)(
    'can be %s and keeps the typed text',
    (as) => {
      const line = withAmountIn(typed('12,5'), as);
      expect(line.amount.text).toBe('12,5');
      expect(amountIn(line)).toBe(as);
    },
  );
});

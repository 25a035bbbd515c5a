import { MOULD_SIZES } from '@larderwright/calc/mould';
import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';
import {
  fillBoxes,
  mouldOfSize,
  sizeName,
  withFill,
} from '../../../worksheets/mould-and-fill/mould-edits.ts';

describe('a mould begun from a usual size', () => {
  test.each(MOULD_SIZES.map((size) => [size.id, size] as const))(
    '%s carries its measures, each marked as a default until somebody measures',
    (_, size) => {
      const mould = mouldOfSize('m1', size);
      expect(mould.shape).toBe(size.shape);
      const filled = Object.entries(mould.dimensions).filter(([, entry]) => entry.text !== '');
      expect(filled.map(([dimension]) => dimension).sort()).toEqual(Object.keys(size.measures).sort());
      expect(filled.every(([, entry]) => entry.origin === 'default')).toBe(true);
    },
  );

  // Derived: 4 mm of crust at both walls, at base and lid: 8 mm off each measure.
  test('of a pie is the room inside its crust, and says so', () => {
    const pie = MOULD_SIZES.find(({ crustMm }) => crustMm === 4 && crustMm !== undefined);
    if (!pie) throw new Error('No pie mould in the list');
    expect(sizeName(pie)).toMatch(/inside a 4 mm crust/);
    expect(mouldOfSize('m1', pie).dimensions.length.text).toBe(String((pie.measures.length ?? 0) - 8));
  });
});

describe('boxes for the weighed fills', () => {
  test('one a mould, and every box ever written in', () => {
    expect(fillBoxes(2, 0)).toBe(2);
    expect(fillBoxes(2, 5)).toBe(5);
    expect(fillBoxes(null, 0)).toBe(1);
    expect(fillBoxes(0, 0)).toBe(1);
    expect(fillBoxes(1e6, 0)).toBeLessThanOrEqual(60);
    expect(fillBoxes(Number.NaN, 0)).toBe(1);
  });

  test('leave the boxes before it blank, which is unknown and not zero', () => {
    expect(withFill([], 2, enteredEntry('1860', 'g'))).toEqual([
      blankEntry('g'),
      blankEntry('g'),
      enteredEntry('1860', 'g'),
    ]);
  });

  test('never change the list they were given', () => {
    const fills = [enteredEntry('1', 'g')];
    withFill(fills, 0, enteredEntry('2', 'g'));
    expect(fills).toEqual([enteredEntry('1', 'g')]);
  });
});

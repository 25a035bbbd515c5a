import { type Batch, newBatch } from '@larderwright/calc/batch';
import { newDryCurePiece, newDryCureSlice } from '@larderwright/calc/dry-cure';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';
import { bagBlocks } from '../../../worksheets/dry-cure/bag-card.tsx';
import { computeDryCure } from '../../../worksheets/dry-cure/compute.ts';
import { BLANK_HEAD } from '../../../worksheets/parts/card-head.ts';

const piece = (id: string, grams: string, cureG = '') => ({
  ...newDryCurePiece(id),
  name: id,
  skinOff: enteredEntry(grams, 'g'),
  thickness: enteredEntry('40', 'mm'),
  curingSaltActual: cureG === '' ? newDryCurePiece(id).curingSaltActual : enteredEntry(cureG, 'g'),
});

/** An invented belly and loin under the rule of the United States. */
function batch(): Batch {
  const blank = newBatch({ id: 'b1', at: '2026-03-10T07:30:00+00:00', zone: 'UTC' });
  const slice = newDryCureSlice();
  return {
    ...blank,
    cure: { ...blank.cure, ruleSetId: 'us-federal', scaleReadability: enteredEntry('0.1', 'g') },
    dryCure: {
      ...slice,
      product: 'bacon',
      finish: 'cook-before-eating',
      pieces: [piece('Belly', '5000'), piece('Loin', '2000', '40')],
      nitriteTarget: enteredEntry('120', 'ppm'),
      pack: {
        name: 'Pink',
        lot: 'L1',
        strength: { nitrite: enteredEntry('6.25', '%'), nitrate: enteredEntry('0', '%') },
      },
      startedOn: '2026-11-02',
    },
  };
}

describe('the dry-cure page', () => {
  test('sets a card for every bag, each with its own dose and its own stops', () => {
    const { cards } = computeDryCure(batch());
    expect(cards.map(({ bag }) => bag.piece)).toEqual(['Belly', 'Loin']);
    // Derived: 120 mg/kg × 5 kg ÷ 62.5 mg/g; 40 g on 2 kg is 1,250 mg/kg.
    expect(cards[0]?.bag.cure).toEqual({ text: '9.6\u00a0g', flag: 'W' });
    expect(cards[0]?.stops).toEqual([]);
    expect(cards[1]?.stops.join(' ')).toMatch(/Loin: 1250 mg\/kg/);
    expect(cards[1]?.bag.verdicts[0]?.state).toBe('fail');
    expect(cards[1]?.bag.verdicts[0]?.title).toMatch(/^Loin: Over the limit/);
  });

  test('flags what was typed, what is a default and what was worked out', () => {
    const bag = computeDryCure(batch()).cards[0]?.bag;
    expect(bag?.skinOff?.flag).toBe('E');
    expect(bag?.chill).toEqual({ text: '3\u00a0°C', flag: 'D' });
    expect(bag?.salt?.flag).toBe('W');
  });

  test('says nothing and judges nothing for a batch without the slice', () => {
    const blank = newBatch({ id: 'b', at: '', zone: 'UTC' });
    expect(computeDryCure(blank)).toMatchObject({ findings: [], verdicts: [], cards: [] });
  });

  test('names the rule set with its edition and last check in the foot of the card', () => {
    expect(computeDryCure(batch()).head.ruleSets).toEqual([
      expect.stringMatching(/^United States, federal inspection, .*; checked \d{4}-\d\d-\d\d/),
    ]);
  });

  test('states no concentration of a salt box, on the card either', () => {
    const salted = batch();
    if (salted.dryCure) salted.dryCure.method = 'salt-box';
    const { cards } = computeDryCure(salted);
    expect(cards[0]?.bag.ppm).toMatch(/no mg\/kg can be stated/);
    expect(cards[0]?.bag.verdicts[0]).toMatchObject({
      state: 'cannot-tell',
      title: expect.stringMatching(/nitrite/),
    });
    expect(cards[0]?.bag.cure).toBeNull();
  });

  test('prints an empty form from nothing, with a unit in every box for a number', () => {
    const blocks = bagBlocks(BLANK_HEAD, {});
    expect(blocks).toHaveLength(6);
    expect(blocks.flatMap(({ rows = [] }) => rows.flat()).every(({ value }) => value == null)).toBe(true);
    expect(blocks.find(({ heavy }) => heavy)?.title).toMatch(/^CURING SALT: weighed in grams/);
  });
});

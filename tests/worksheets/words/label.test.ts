import { labelOf } from '@larderwright/calc/batch';
import { loadIngredientDetails, loadIngredients } from '@larderwright/calc/ingredients';
import { type LabelSlice, newLabelExtra, newLabelLine, newLabelSlice } from '@larderwright/calc/label';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';
import { demos } from '../../../content/demo/index.ts';
import { labelWords } from '../../../worksheets/words/label.ts';

const table = await loadIngredients();
const details = await loadIngredientDetails();

const slices: readonly Partial<LabelSlice>[] = [
  {},
  { loss: 'juices', looksLikeCut: true, name: 'Terrine of the house' },
  {
    loss: 'water',
    pack: 'vacuum',
    life: enteredEntry('30', 'd'),
    market: 'us',
    storeAt: enteredEntry('8', 'C'),
  },
  { loss: 'water', pack: 'jar', life: enteredEntry('30', 'd'), hurdle: 'salt-3-5', audience: 'under-threes' },
  { loss: 'nothing', dateKind: 'best-before', audience: 'susceptible', packedOn: '2027-01-01' },
  { loss: 'water', cookedOn: '2020-01-01', extras: [{ ...newLabelExtra('x'), name: 'crust' }] },
];

describe('words of the label', () => {
  test('of every demo batch are whole sentences, with no hole where a figure should stand', () => {
    const said = new Set<string>();
    for (const demo of Object.values(demos)) {
      for (const change of slices) {
        const lines = demo.formula.lines.map(({ id }) => ({
          ...newLabelLine(id),
          stressed: true,
          collagen: enteredEntry(change.loss === 'water' ? '8' : '', '%'),
        }));
        const label = { ...newLabelSlice(), lines, ...change };
        const { findings, verdicts } = labelOf({ ...demo, label }, table, details);
        for (const { id, params } of [
          ...findings,
          ...verdicts.map(({ reason: id, params }) => ({ id, params })),
        ]) {
          said.add(id);
          const { title, body } = labelWords[id](params);
          expect(`${title} ${body}`, id).not.toMatch(/undefined|NaN|null|\[object|Infinity|\( *\)| {2}|, \./);
          expect(title, id).toMatch(/[.?]$/);
          expect(body, id).toMatch(/[.?]$/);
        }
      }
    }
    expect(said.size).toBeGreaterThanOrEqual(22);
  });
});

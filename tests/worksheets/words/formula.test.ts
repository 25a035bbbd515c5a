import { describe, expect, it } from 'vitest';
import { formulaWords } from '../../../worksheets/words/formula.ts';

describe('the words of a formula', () => {
  it('say every finding in a whole sentence, with no gap where a figure should be', () => {
    const params = {
      name: 'Bacon',
      names: 'Bacon',
      ingredientId: 'x',
      count: 1,
      ofCount: 2,
      percent: 120,
      ofTotalPercent: 110,
      meatPercent: 0,
      actualG: 200,
      plannedG: 20,
      saltG: 30,
      carriedPercent: 1.575,
      targetPercent: 1,
      excessG: 11.5,
      saltPercent: 1.5,
      liningSaltG: 6,
      mixPercent: 1.5,
      linedPercent: 1.636,
      plainSaltG: 17,
      what: 'salt',
      family: 'Country terrine',
      valuePercent: 5,
      minPercent: 1.6,
      maxPercent: 1.9,
      limitPercent: 30,
      side: 'least',
    };
    for (const [id, say] of Object.entries(formulaWords)) {
      const { title, body } = say(params);
      expect(`${title} ${body}`, id).not.toMatch(/undefined|NaN|null|\s{2,}%|\( *\)/);
      expect(title.endsWith('.'), id).toBe(true);
    }
  });
});

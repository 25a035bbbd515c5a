import { assess, type Batch, newBatch } from '@larderwright/calc/batch';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { enteredEntry } from '@larderwright/calc/quantities';
import { batchFigures } from '@larderwright/calc/trends';
import { describe, expect, it } from 'vitest';
import { countryTerrine } from '../../../content/demo/country-terrine.ts';
import { muttonHam } from '../../../content/demo/mutton-ham.ts';

const composition = await loadIngredients();
const figures = (batch: Batch) =>
  batchFigures(batch, assess(batch, { composition, today: '2026-11-27' }), '2026-03-10');

describe('the figures of a batch', () => {
  it('are those of its weights and readings', () => {
    const of = figures(countryTerrine);
    // Derived from the record: 2 × 1860 g filled, 3497 g finished.
    expect(of.filledG).toBe(3720);
    expect(of.cookLossFraction).toBeCloseTo(1 - 3497 / 3720, 12);
    // Derived: in at 08:40; the first reading at 71 + 0.5 °C or above is 71.9 at 11:20.
    expect(of.cookMin).toBe(160);
    // Derived: last reading at or under 10 °C 08:55, first at or over 54.4 °C 10:25.
    expect(of.comeUpMin).toBe(90);
    expect(of.peakC).toBe(73.1);
    // Derived: 1700 g of lean in 3850.1 g.
    expect(of.shares.lean).toBeCloseTo(1700 / 3850.1, 4);
    // Derived: last reading above 57.2 °C 12:00, first at or under 21.1 °C 13:30; to 5 °C 15:15 less the probe's error.
    expect(of.legs.map(({ state }) => state)).toEqual(['pass', 'pass']);
    expect(of.legs[0]?.worstMin).toBe(90);
    expect(of.deviations).toBe(0);
  });

  it('of an empty record are not recorded, and none is zero', () => {
    const of = figures(newBatch({ id: 'empty', at: '2026-03-10T08:00:00Z', zone: 'UTC' }));
    expect(of).toMatchObject({
      shares: {},
      boughtG: null,
      trimmedG: null,
      filledG: null,
      finishedG: null,
      cookLossFraction: null,
      cookMin: null,
      comeUpMin: null,
      peakC: null,
      legs: [],
    });
  });

  it('of a brined muscle tell no salt and no nitrite from its bare meat', () => {
    expect(figures(muttonHam)).toMatchObject({ saltFraction: null, nitritePpmTotal: null });
  });

  it('have no cook loss while a mould was not weighed or the weight cannot be read', () => {
    const typed = (text: string): Batch => ({
      ...countryTerrine,
      product: { ...countryTerrine.product, finished: enteredEntry(text, 'g') },
    });
    expect(figures(typed('about 3.5')).cookLossFraction).toBeNull();
    const [mould] = countryTerrine.mould.moulds;
    if (!mould) throw new Error('the demo has a mould');
    const halfWeighed = { ...mould, actualFills: [enteredEntry('1860', 'g')] };
    const of = figures({ ...countryTerrine, mould: { ...countryTerrine.mould, moulds: [halfWeighed] } });
    expect(of.cookLossFraction).toBeNull();
  });
});

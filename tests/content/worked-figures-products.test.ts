import { nitritePpm } from '@larderwright/calc/cure';
import { cookRuleSet, isByFat } from '@larderwright/calc/lethality';
import { describe, expect, it } from 'vitest';
import { FIGURES, type FigureId } from '../../content/figures/index.ts';
import { expectFigure, value } from './figure-value.ts';

/** The ends of a figure that is a range. */
function ends(id: FigureId): readonly [number, number] {
  const { value: range } = FIGURES[id];
  if (typeof range === 'number') throw new Error(`${id} is a single value.`);
  return range;
}

/* Every check is derived: arithmetic on the figures of the same exercise. */
describe('figures of the products agree with each other', () => {
  it('a pastry sheet is the mould unfolded, its corners cut out, with a lid', () => {
    const overlap = value('pie-lap');
    expect(overlap).toBe(Math.max(...ends('crust-overlap')));
    const [length, width, height] = [value('pie-long'), value('pie-wide'), value('pie-deep')];
    const side = height + overlap;
    expectFigure('pie-sheet-long', length + 2 * side);
    expectFigure('pie-sheet-wide', width + 2 * side);
    const sheetMm2 =
      (length + 2 * side) * (width + 2 * side) -
      4 * side ** 2 +
      (length + 2 * overlap) * (width + 2 * overlap);
    // Raw paste 1.15–1.25 g/mL, taken as 1.2: common practice, no source. The figure is rounded to ten grams.
    const massG = (sheetMm2 * value('crust-wall') * 1.2) / 1000;
    expect(Math.abs(value('crust-example') - massG)).toBeLessThanOrEqual(5);
  });

  it('the crust of the key numbers lies between leaking and raw', () => {
    expect(value('crust-leaks')).toBeLessThan(value('crust-wall'));
    expect(Math.max(...ends('crust-lid'))).toBeLessThan(value('crust-raw'));
  });

  it('gelatine goes with the square root of the bloom, turned over', () => {
    expectFigure('jelly-example-strong', value('jelly-example-weak') * Math.sqrt(200 / 250));
  });

  it('a casing is the batch over its metre, with the spare', () => {
    const metres = value('casing-example-batch') / value('casing-example-metre');
    expectFigure('casing-example', metres * (1 + value('casing-example-spare') / 100));
    // π/4 · 33² mm² · 1.03 g/mL for one metre; the density is common practice, no source.
    expectFigure('casing-example-metre', ((Math.PI / 4) * 33 ** 2 * 1.03) / 1000);
  });

  it('a batter of 28 parts of fat and 14 of water is over the limit', () => {
    expect(28 + 14).toBe(42);
    expect(42).toBeGreaterThan(value('cooked-fat-water-us'));
    expect(28).toBeLessThan(value('cooked-fat-us'));
  });

  it('the belly is dosed to its level, and its plain salt fills up the rest', () => {
    const meatG = value('belly-example') * 1000;
    const strength = value('belly-example-strength') / 100;
    const cureG = value('belly-example-cure');
    expect(nitritePpm(cureG * strength, meatG)).toBeCloseTo(value('bacon-us-pumped'), 6);
    expect(value('bacon-us-pumped')).toBeLessThanOrEqual(value('bacon-us-dry'));
    expectFigure('belly-example-plain', (meatG * value('belly-example-aim')) / 100 - cureG * (1 - strength));
  });

  it('salt stays while water goes', () => {
    expectFigure(
      'dried-example-after',
      value('dried-example-salt') / (1 - value('dried-example-loss') / 100),
    );
  });

  it('a block without its ends gives twenty-two slices', () => {
    expect(
      Math.floor((value('slice-example-block') - 2 * value('slice-example-end')) / value('slice-example')),
    ).toBe(22);
  });

  it('losses multiply', () => {
    expectFigure('yield-example', 0.92 * 0.97 * 0.98 * 100);
  });

  it('a price is the cost over what the margin leaves', () => {
    expect(0.82 / (1 - value('price-margin') / 100)).toBeCloseTo(2.73, 2);
  });

  it('three hours out are past the first clock and short of the second', () => {
    expect(2 * 1.5).toBeGreaterThan(value('clock-reuse'));
    expect(2 * 1.5).toBeLessThan(value('clock-bin'));
  });

  it('the parfait of the question meets no listed poultry hold', () => {
    const pairs = ['uk-advice', 'nz-card'].flatMap((id) => cookRuleSet(id)?.limits ?? []);
    const atThatHeat = pairs.filter(({ stated }) => stated.value === value('parfait-short-core'));
    expect(atThatHeat).toHaveLength(2);
    for (const { hold } of atThatHeat)
      expect(isByFat(hold) ? 0 : hold.s).toBeGreaterThan(value('parfait-short-hold') * 60);
    expect(value('parfait-cold-liver')).toBeLessThan(Math.min(...ends('warm-emulsion')));
  });
});

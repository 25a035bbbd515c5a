import {
  type ChillBudgetSlice,
  chillBudgetStage,
  finenessOf,
  type LotKind,
  newChillBudgetSlice,
  newChillLot,
  newGrindPass,
} from '@larderwright/calc/chill-budget';
import { FAMILIES } from '@larderwright/calc/formula';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';
import { chillBudgetWords } from '../../../worksheets/words/chill-budget.ts';

const lot = (id: string, kind: LotKind, kg: string, tempC: string) => ({
  ...newChillLot(id, kind),
  mass: enteredEntry(kg, 'kg'),
  temp: enteredEntry(tempC, 'C'),
});

/** An invented sausage: 8 kg lean at 4 °C, 2 kg back fat at 2 °C. */
const sausage = (): ChillBudgetSlice => ({
  ...newChillBudgetSlice(),
  lots: [lot('lean', 'lean', '8', '4'), lot('fat', 'fat', '2', '2')],
  limit: enteredEntry('10', 'C'),
});

const stage = (slice: ChillBudgetSlice, familyId: string | null = null) =>
  chillBudgetStage(slice, { familyId });
const ids = (slice: ChillBudgetSlice) => stage(slice).findings.map(({ id }) => id);

describe('the chill budget of a mix', () => {
  it('warms thawed meat by just what each pass is said to', () => {
    const { values } = stage(sausage());
    expect(values.steps.map(({ riseC }) => riseC && Number(riseC.toFixed(6)))).toEqual([null, 3, 3, 2]);
    expect(values.endC).toBeCloseTo((values.steps[0]?.tempC ?? 0) + 8, 6);
  });

  it('needs as much ice and as cold a start as bring the end to the limit', () => {
    const slice = sausage();
    const { values } = stage(slice);
    const iced = {
      ...slice,
      lots: [...slice.lots, lot('ice', 'ice', String((values.iceNeededG ?? 0) / 1000), '-10')],
      passes: slice.passes.map((pass) => ({ ...pass })),
    };
    // The ice is in the mix before the passes, so their warming is a little more heat.
    expect(stage(iced).values.endC).toBeGreaterThan(9.9);
    expect(stage(iced).values.endC).toBeLessThan(10.5);
    const start = String(values.preChillC);
    const chilled = { ...slice, lots: [lot('lean', 'lean', '8', start), lot('fat', 'fat', '2', start)] };
    expect(stage(chilled).values.endC).toBeCloseTo(10, 4);
    expect(stage(chilled).values.iceNeededG ?? 99).toBeLessThan(0.01);
  });

  it('adds ice and liquid before the pass they are meant for', () => {
    const slice = sausage();
    slice.passes = [newGrindPass('g', 'grind'), newGrindPass('c', 'chop')];
    slice.lots = [...slice.lots, { ...lot('ice', 'ice', '0.5', '-10'), beforePassId: 'c' }];
    const { values } = stage(slice);
    expect(values.steps.map(({ massG }) => massG)).toEqual([10_000, 10_000, 10_500]);
    expect(values.steps[2]?.addedIceLeftG).toBe(0);
  });

  it('tells what is left of added ice while the mix stands at 0 °C', () => {
    const slice = { ...sausage(), passes: [] };
    slice.lots = [lot('lean', 'lean', '2', '0'), lot('ice', 'ice', '1', '0')];
    // Ice at 0 °C reads as water at 0 °C: nothing to melt. A hair below it is ice.
    slice.lots = [lot('lean', 'lean', '2', '1'), lot('ice', 'ice', '1', '-1')];
    const end = stage(slice).values.steps[0];
    // derived: 2 kg × 3.532 × 1 − 1 kg × 2.05 × 1 = 5.014 kJ melt 15 g of the 1,000 g.
    expect(end?.tempC).toBe(0);
    expect(end?.addedIceLeftG).toBeCloseTo(1000 - 5014 / 333.6, 0);
  });

  it('shows the end with the melting of fat counted and not', () => {
    const careful = stage(sausage()).values;
    const melting = stage({ ...sausage(), fatHeat: 'with-melting' }).values;
    expect(careful.endOtherFatC).toBe(melting.endC);
    expect(careful.endC ?? 0).toBeGreaterThan(melting.endC ?? 99);
  });

  it('takes the limit of the family where none is typed: common practice, no source', () => {
    const slice = { ...sausage(), limit: newChillBudgetSlice().limit };
    expect(stage(slice, 'country-terrine').values).toMatchObject({ limitC: 12, limitFrom: 'coarse' });
    expect(stage(slice, 'fish-mousseline').values).toMatchObject({ limitC: 8, limitFrom: 'mousseline' });
    expect(stage(slice, 'rillettes').values.limitC).toBe(null);
    const known = FAMILIES.map(({ id }) => id);
    expect(known.filter((id) => finenessOf(id) !== null)).toHaveLength(15);
  });

  it('warns of warm meat, warm fat, a warm pass and a warm end', () => {
    const warm = sausage();
    warm.lots = [lot('lean', 'lean', '8', '6'), lot('fat', 'fat', '2', '5')];
    expect(ids(warm)).toEqual(
      expect.arrayContaining([
        'chill-budget.start-too-warm',
        'chill-budget.fat-too-warm',
        'chill-budget.pass-too-warm',
        'chill-budget.rechill-now',
        'chill-budget.end-too-warm',
        'chill-budget.ice-is-added-water',
      ]),
    );
    const cold = sausage();
    cold.lots = [lot('lean', 'lean', '8', '-1'), lot('fat', 'fat', '2', '-2')];
    expect(ids(cold)).toEqual([]);
    cold.lots = [lot('lean', 'lean', '8', '-12'), lot('fat', 'fat', '2', '-12')];
    expect(ids(cold)).toContain('chill-budget.too-hard');
  });

  it('says when the ice is more water than the formula allows, and when ice is water', () => {
    const slice = { ...sausage(), liquidAllowance: enteredEntry('50', 'g'), limit: enteredEntry('4', 'C') };
    expect(ids(slice)).toContain('chill-budget.ice-over-liquid');
    slice.iceTemp = enteredEntry('3', 'C');
    expect(ids(slice)).toContain('chill-budget.ice-too-warm');
    expect(stage(slice).values.iceNeededG).toBe(null);
    expect(ids({ ...sausage(), limit: enteredEntry('-1', 'C') })).toContain('chill-budget.ice-melts-nothing');
  });

  it('blank and unreadable fields are unknown, never a cold mix', () => {
    const blank = sausage();
    blank.lots = [{ ...lot('lean', 'lean', '8', ''), name: 'Pork' }, lot('fat', 'fat', '2', '2')];
    const { values, missing } = stage(blank);
    expect(values.endC).toBe(null);
    expect(values.iceNeededG).toBe(null);
    expect(values.preChillC).toBe(null);
    expect(missing.map(({ field }) => field)).toContain('chillBudget.lots.lean.temp');
    const noRise = sausage();
    noRise.passes = [{ ...newGrindPass('p', 'grind'), rise: enteredEntry('warm', 'dC') }];
    expect(stage(noRise).values.endC).toBe(null);
    const mixed = sausage();
    mixed.lots = [lot('m', 'mixed', '5', '2')];
    expect(stage(mixed).values.endC).toBe(null);
    expect(stage(mixed).missing.map(({ field }) => field)).toContain('chillBudget.lots.m.fat');
    expect(stage(newChillBudgetSlice()).values.endC).toBe(null);
  });

  it('has words for every finding it raises', () => {
    const warm = { ...sausage(), liquidAllowance: enteredEntry('1', 'g') };
    warm.lots = [lot('lean', 'lean', '8', '6'), lot('fat', 'fat', '2', '5'), lot('i', 'ice', '1', '2')];
    for (const { id, params } of stage(warm).findings)
      expect(chillBudgetWords[id](params).title).not.toMatch(/undefined|NaN/);
  });
});

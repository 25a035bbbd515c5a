import { type FormulaValues, formulaStage } from '@larderwright/calc/formula';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { roundTo } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';
import {
  COUNTRY_TERRINE,
  LIVER_PARFAIT,
  MUTTON_HAM,
  PATE_EN_CROUTE,
  type ScenarioFormula,
  TROUT_MOUSSELINE,
} from '../../fixtures/scenario-formulas.ts';

const composition = await loadIngredients();

function values(slice: ScenarioFormula['slice']): FormulaValues {
  return formulaStage(slice, { composition }).values;
}

const percent = (fraction: number | null, decimals: number) =>
  fraction === null ? null : roundTo(fraction * 100, decimals);

describe.each([
  ['country terrine of venison', COUNTRY_TERRINE],
  ['chicken-liver parfait', LIVER_PARFAIT],
  ['rabbit pâté in crust', PATE_EN_CROUTE],
  ['trout mousseline', TROUT_MOUSSELINE],
])('%s', (_, { slice, expected, shares }) => {
  const { mix } = values(slice);

  // Worked out by hand for the invented batch, to the digit printed. Compositions: common practice, no source.
  it('has the total and meat block printed', () => {
    expect(roundTo(mix.totalG ?? Number.NaN, 1)).toBe(expected.totalG);
    expect(mix.meatBlockG).toBe(expected.meatBlockG);
  });
  it('has the fat, protein and water printed', () => {
    expect(percent(mix.fat.fraction, 1)).toBe(expected.fatPercent);
    expect(percent(mix.protein.fraction, 1)).toBe(expected.proteinPercent);
    expect(percent(mix.water.fraction, 1)).toBe(expected.waterPercent);
  });
  it('has the salt from all sources and on the water phase printed', () => {
    expect(roundTo(mix.salt.grams ?? Number.NaN, 1)).toBe(expected.saltG);
    expect(percent(mix.salt.fraction, 2)).toBe(expected.saltPercent);
    expect(percent(mix.saltOnWaterFraction, 2)).toBe(expected.saltOnWaterPercent);
  });
  it('has every share printed', () => {
    expect(mix.lines.map(({ lineId }) => lineId)).toEqual(Object.keys(shares));
    for (const line of mix.lines) {
      const [ofTotal, ofMeat] = shares[line.lineId] ?? [Number.NaN, null];
      expect(percent(line.ofTotalFraction, 2), line.lineId).toBe(ofTotal);
      if (ofMeat !== null) expect(percent(line.ofMeatFraction, 1), line.lineId).toBe(ofMeat);
    }
  });
  it('adds its lines up to its total and its contributions up to its salt', () => {
    const masses = mix.lines.map(({ massG }) => massG ?? Number.NaN);
    expect(masses.reduce((sum, massG) => sum + massG, 0)).toBeCloseTo(mix.totalG ?? Number.NaN, 9);
    const salt = mix.salt.contributions.reduce((sum, { grams }) => sum + (grams ?? 0), 0);
    expect(salt).toBeCloseTo(mix.salt.grams ?? Number.NaN, 9);
  });
});

describe('the sources of salt in the country terrine', () => {
  const { mix } = values(COUNTRY_TERRINE.slice);
  const salt = (id: string) =>
    mix.salt.contributions.find(({ lineId }) => lineId === id)?.grams ?? Number.NaN;

  it('are plain salt 47.5, bacon 5.4, curing salt 5.1 and about 5.1 g from meats, liver, egg, milk and bread', () => {
    expect(salt('salt')).toBe(47.5);
    expect(roundTo(salt('bacon'), 1)).toBe(5.4);
    // 5.4 g at 6.25 % nitrite: 5.4 × 0.9375 = 5.06 g.
    expect(roundTo(salt('curing-salt'), 1)).toBe(5.1);
    const rest = ['venison', 'pork', 'back-fat', 'liver', 'egg', 'milk', 'bread'].map(salt);
    expect(rest.reduce((sum, grams) => sum + grams, 0)).toBeCloseTo(5.1, 1);
  });

  it('tell which line was too little known to count, and that it was little', () => {
    const stage = formulaStage(COUNTRY_TERRINE.slice, { composition });
    const leftOut = stage.findings.find(({ id }) => id === 'formula.small-parts-left-out');
    expect(leftOut?.params).toEqual({ names: 'juniper', count: 1 });
    expect(mix.salt.leftOut).toEqual(['juniper']);
    expect(stage.missing).toEqual([]);
  });
});

describe('the salt of the trout mousseline', () => {
  it('counts 2.0 g from the smoked trout', () => {
    const { mix } = values(TROUT_MOUSSELINE.slice);
    const smoked = mix.salt.contributions.find(({ lineId }) => lineId === 'smoked-trout');
    expect(smoked?.grams).toBeCloseTo(2, 10);
  });
});

describe('the mutton ham', () => {
  const { mix } = values(MUTTON_HAM);
  const added = ['salt', 'curing-salt']
    .map((id) => mix.salt.contributions.find(({ lineId }) => lineId === id)?.grams ?? Number.NaN)
    .reduce((sum, grams) => sum + grams, 0);

  // 79.9 + 6.9 × 0.9375 = 86.4 g = 2.40 % of 3,600 g of meat and water. Derived.
  it('has 86.4 g of salt added, 2.40 % of meat and water', () => {
    expect(roundTo(added, 1)).toBe(86.4);
    expect(roundTo((added / 3600) * 100, 2)).toBe(2.4);
  });

  it('counts the sodium of the meat beside the salt added', () => {
    // 2,400 g at 0.2 % and tap water at 4 mg sodium per 100 g (SR28 NDB 14411).
    expect((mix.salt.grams ?? Number.NaN) - added).toBeCloseTo(4.8 + 0.12, 1);
  });
});

describe('facts that other rules follow', () => {
  it('of the country terrine: pork liver, no bird, no fish, a cured garnish', () => {
    const { facts } = values(COUNTRY_TERRINE.slice);
    expect(facts.porkLiver).toBe(true);
    expect(facts.poultry).toBe(false);
    expect(facts.fish).toBe(false);
    expect(percent(facts.liverFraction, 2)).toBe(8.57);
    expect(facts.curedLines).toEqual(['bacon']);
    // Wheat, milk, egg, and sulphites where the port brings them; chestnut is on neither list.
    expect(facts.euAllergens.map(({ name }) => name)).toEqual([
      'cereals containing gluten',
      'eggs',
      'milk',
      'sulphites',
    ]);
    expect(facts.usAllergens.map(({ name }) => name)).toEqual(['egg', 'milk', 'wheat']);
    expect(facts.allergensUnknown).toEqual([]);
  });

  it('of the parfait and the pie: a bird, though one is mostly butter and the other mostly rabbit', () => {
    expect(values(LIVER_PARFAIT.slice).facts.poultry).toBe(true);
    const pie = values(PATE_EN_CROUTE.slice).facts;
    expect(pie.poultry).toBe(true);
    expect(pie.poultrySpecies).toEqual(['chicken']);
    expect(pie.porkLiver).toBe(false);
    expect(pie.euAllergens.map(({ name }) => name)).toEqual(['eggs', 'milk', 'mustard', 'sulphites']);
  });

  it('of the mousseline: fish, egg, milk', () => {
    const { facts } = values(TROUT_MOUSSELINE.slice);
    expect(facts.fish).toBe(true);
    expect(facts.poultry).toBe(false);
    expect(facts.euAllergens.map(({ name }) => name)).toEqual(['eggs', 'fish', 'milk']);
  });
});

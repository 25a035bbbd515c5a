import {
  curingSaltNaClFraction,
  type FormulaLine,
  formulaStage,
  lineComposition,
  saltOnWaterFraction,
} from '@larderwright/calc/formula';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';
import { makeLine, makeSlice } from '../../fixtures/scenario-formulas.ts';

const composition = await loadIngredients();
const stage = (lines: FormulaLine[], saltTarget = '') =>
  formulaStage(makeSlice(lines, { saltTarget: enteredEntry(saltTarget, '%') }), { composition });
const BLANK = blankEntry('%');
const declared = (changes: Partial<FormulaLine['declared']>) => ({
  declared: { salt: BLANK, fat: BLANK, protein: BLANK, water: BLANK, ...changes },
});
const strength = (nitrite: string, nitrate: string) => ({
  cure: { nitrite: enteredEntry(nitrite, '%'), nitrate: enteredEntry(nitrate, '%') },
});

describe('salt on the water phase', () => {
  it.each([
    // Formula of the Ontario Fish Plant Guidelines, F.B.14.14: 100 × 3 ÷ (3 + 58).
    [3, 58, 0.04918],
    // 1.7 % salt at 60 % and at 45 % water. Derived by the same formula.
    [1.7, 60, 0.0276],
    [1.7, 45, 0.0364],
  ])('of %d %% salt and %d %% water is %d', (salt, water, expected) => {
    expect(saltOnWaterFraction(salt, water)).toBeCloseTo(expected, 4);
  });

  it('of nothing, or of what is no mass, is unknown', () => {
    expect(saltOnWaterFraction(0, 0)).toBe(null);
    expect(saltOnWaterFraction(-1, 60)).toBe(null);
    expect(saltOnWaterFraction(1, Number.NaN)).toBe(null);
    expect(saltOnWaterFraction(Number.POSITIVE_INFINITY, 1)).toBe(null);
  });
});

describe('the salt of a curing salt is what nitrite and nitrate leave', () => {
  const fraction = (nitrite: string, nitrate: string) =>
    curingSaltNaClFraction(makeLine('cure', 'curing-salt', null, '5', strength(nitrite, nitrate)));

  it.each([
    // By mass: 100 − 6.25, 100 − 0.6, 100 − 6.25 − 4. Derived.
    ['6.25', '0', 0.9375],
    ['0.6', '0', 0.994],
    ['6.25', '4', 0.8975],
  ])('%s %% nitrite, %s %% nitrate', (nitrite, nitrate, expected) => {
    expect(fraction(nitrite, nitrate)).toBeCloseTo(expected, 12);
  });

  it('and is unknown while either is blank, or when they pass 100 %', () => {
    expect(fraction('', '0')).toBe(null);
    expect(fraction('6.25', '')).toBe(null);
    expect(fraction('60', '50')).toBe(null);
  });

  it('so that a blank strength is missed by name', () => {
    const { values, missing } = stage([
      makeLine('pork', 'lean', 'pork-ground', '1000'),
      makeLine('cure', 'curing-salt', null, '2.5', strength('', '0')),
    ]);
    expect(values.mix.salt.fraction).toBe(null);
    expect(missing).toEqual([{ field: 'formula.lines.cure.cure.nitrite', neededFor: 'formula.salt' }]);
  });
});

describe('where a composition comes from', () => {
  it('the pack outranks the table', () => {
    const line = makeLine(
      'bacon',
      'garnish',
      'bacon-raw',
      '100',
      declared({ salt: enteredEntry('3.2', '%') }),
    );
    const found = lineComposition(line, composition);
    expect(found.salt).toEqual({ fraction: 0.032, from: 'declared' });
    // SR28 NDB 10123: fat 39.69.
    expect(found.fat).toEqual({ fraction: 0.3969, from: 'table' });
  });

  it('a pack figure that cannot be read is unknown: the table does not stand in', () => {
    const line = makeLine(
      'bacon',
      'garnish',
      'bacon-raw',
      '100',
      declared({ salt: enteredEntry('3,200', '%') }),
    );
    expect(lineComposition(line, composition).salt).toEqual({ fraction: null, from: 'unknown' });
  });

  it('a declared zero is a zero, a blank is not', () => {
    const line = makeLine('x', 'garnish', null, '100', declared({ fat: enteredEntry('0', '%') }));
    const found = lineComposition(line, composition);
    expect(found.fat).toEqual({ fraction: 0, from: 'declared' });
    expect(found.water).toEqual({ fraction: null, from: 'unknown' });
  });

  it('plain salt is all salt; a salt substitute is what its row says', () => {
    expect(lineComposition(makeLine('s', 'salt', null, '10'), composition).salt.fraction).toBe(1);
    expect(lineComposition(makeLine('s', 'salt', 'salt', '10'), composition).salt.fraction).toBe(1);
    const substitute = makeLine('s', 'salt', 'potassium-chloride', '10');
    expect(lineComposition(substitute, composition).salt.fraction).toBe(0);
  });

  it('pack figures past 100 % are pointed at', () => {
    const line = makeLine(
      'x',
      'garnish',
      null,
      '100',
      declared({ fat: enteredEntry('60', '%'), water: enteredEntry('60', '%') }),
    );
    expect(stage([line]).findings.map(({ id }) => id)).toContain('formula.declared-over-100');
  });
});

describe('an unknown composition is never zero', () => {
  const pork = makeLine('pork', 'lean', 'pork-ground', '1000');

  it('leaves figures unknown, bounds them, and says what is missing', () => {
    const { values, findings, missing } = stage([pork, makeLine('mystery', 'garnish', null, '100')]);
    const { fat } = values.mix;
    expect(fat.fraction).toBe(null);
    // SR28 NDB 10219: 21.19 % fat; the other 100 g of 1,100 may hold none or be fat altogether. Derived.
    expect(fat.minFraction).toBeCloseTo(211.9 / 1100, 9);
    expect(fat.maxFraction).toBeCloseTo(311.9 / 1100, 9);
    expect(findings.find(({ id }) => id === 'formula.composition-unknown')?.params.names).toBe('mystery');
    expect(missing.map(({ field }) => field)).toContain('formula.lines.mystery.declared.salt');
    expect(values.mix.saltOnWaterFraction).toBe(null);
    expect(values.mix.saltOnWaterMinFraction).toBeLessThan(values.mix.saltOnWaterMaxFraction ?? 0);
  });

  it('bounds a partly known line by what its known parts leave', () => {
    const half = makeLine('x', 'garnish', null, '1000', declared({ fat: enteredEntry('40', '%') }));
    const { water } = stage([half]).values.mix;
    expect(water.minFraction).toBe(0);
    expect(water.maxFraction).toBeCloseTo(0.6, 12);
  });

  it('lets a line pass that is under a thousandth of the mix, and names it', () => {
    const { values, findings } = stage([pork, makeLine('juniper', 'seasoning', 'juniper-berry', '1')]);
    expect(values.mix.fat.fraction).toBeCloseTo(211.9 / 1001, 9);
    expect(findings.map(({ id }) => id)).toEqual(['formula.small-parts-left-out']);
  });

  it('adds small lines together before it lets them pass', () => {
    const small = (id: string) => makeLine(id, 'seasoning', 'juniper-berry', '0.6');
    expect(stage([pork, small('a'), small('b')]).values.mix.fat.fraction).toBe(null);
  });

  it('knows a stranger’s id for unknown', () => {
    const { values, findings } = stage([makeLine('x', 'lean', 'unicorn', '1000')]);
    expect(values.mix.fat.fraction).toBe(null);
    expect(findings.map(({ id }) => id)).toContain('formula.unknown-ingredient');
    expect(values.facts.poultry).toBe(null);
  });
});

describe('salt carried in by any line counts', () => {
  it.each([
    // Salt = sodium × 2.5 (Regulation (EU) No 1169/2011, Annex I) on SR28 sodium: anchovy 3668, caper 2348,
    // green olive 1556, soya sauce 5493, Parmesan-type and stock are rows of the same table.
    ['anchovy-canned', 9.17],
    ['caper', 5.87],
    ['olive-green', 3.89],
    ['soy-sauce', 13.7325],
    ['stock-beef', 0.495],
  ])('%s brings %d %% of itself', (id, percent) => {
    const { values } = stage([makeLine('x', 'garnish', id, '100')]);
    expect(values.mix.salt.grams).toBeCloseTo(percent, 9);
  });

  it('garnish is in the salt total and not in the meat block', () => {
    const { mix } = stage([
      makeLine('pork', 'lean', 'kitchen-pork-shoulder-80-20', '1000'),
      makeLine('bacon', 'garnish', 'kitchen-bacon-dry-cured', '100'),
    ]).values;
    expect(mix.meatBlockG).toBe(1000);
    // 1000 × 0.15 % + 100 × 3 %. Derived.
    expect(mix.salt.grams).toBeCloseTo(4.5, 9);
  });
});

describe('fat of the trim is not nothing', () => {
  it('lean carries fat, and egg, cream and liver do', () => {
    const { mix } = stage([
      makeLine('venison', 'lean', 'kitchen-venison-shoulder', '741.2'),
      makeLine('back-fat', 'fat', 'kitchen-pork-backfat', '258.8'),
    ]).values;
    // 74.12 : 25.88 of 3 % and 88 % is 25 %. Derived.
    expect(mix.fat.fraction).toBeCloseTo(0.25, 4);
  });
});

describe('ratios of the mix', () => {
  it('are water to protein and fat to protein', () => {
    const line = makeLine(
      'dried',
      'lean',
      null,
      '100',
      declared({
        water: enteredEntry('35', '%'),
        protein: enteredEntry('20', '%'),
        fat: enteredEntry('40', '%'),
        salt: enteredEntry('4', '%'),
      }),
    );
    const { mix } = stage([line]).values;
    // 35 ÷ 20, the moisture-to-protein ratio of United States practice. Derived.
    expect(mix.waterToProtein).toBeCloseTo(1.75, 12);
    expect(mix.fatToProtein).toBeCloseTo(2, 12);
  });
});

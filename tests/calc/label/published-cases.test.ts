import { loadIngredientDetails, loadIngredients } from '@larderwright/calc/ingredients';
import {
  addedWaterShare,
  atwaterKcal,
  type DeclaredFigure,
  declareFigure,
  EU_ROUNDING,
  euEnergy,
  euTable,
  MEAT_LIMITS,
  meatContent,
  type NutritionPart,
  nutritionOf,
  perHundredOfRow,
  quidOf,
  saltEquivalent,
  US_ROUNDING,
  usEnergy,
  usPanel,
} from '@larderwright/calc/label';
import { foodCost, foodCostFraction, purchaseOf } from '@larderwright/calc/plan';
import { describe, expect, it } from 'vitest';
import checks from '../../fixtures/label-checks.json' with { type: 'json' };
import { listsItsChecks, published } from '../../tools/published.ts';

/** Values of the cases carry four significant digits. */
const close = (actual: number | null, expected: number, what: string) => {
  expect(actual, what).not.toBeNull();
  expect(Math.abs((actual ?? 0) - expected), `${what}: ${actual} against ${expected}`).toBeLessThanOrEqual(
    Math.max(Math.abs(expected) * 0.001, 5e-7),
  );
};

const table = await loadIngredients();
const details = await loadIngredientDetails();

type Numbers = Readonly<Record<string, number>>;
interface Recipe {
  id: string;
  title: string;
  inputs: {
    ingredients: { id: string; grams: number }[];
    finished_weight_g: number;
    serving_g: number;
    alcohol_retention?: number;
    blank_values_taken_as_zero?: Record<string, string[]>;
  };
  expected: {
    batch_weight_g: number;
    yield_pct: number;
    per_100g: Numbers;
    energy_per_100g: Numbers;
    us_panel_per_serving: Record<string, unknown>;
    eu_declared_per_100g: Record<string, number | string>;
    quid?: Record<string, { grams_used: number; percent_of_finished: number; declare: string }>;
    eu_added_water_pct?: number;
  };
}
const cases = checks.cases as readonly { id: string; kind: string; title: string; [key: string]: unknown }[];
const ofKind = <T>(kind: string) => cases.filter((item) => item.kind === kind) as unknown as T[];

/** The case's names of blanks that it counts as none. */
const BLANK: Readonly<Record<string, keyof NutritionPart['per100']>> = {
  sugars_g: 'sugarsG',
  added_sugars_g: 'addedSugarsG',
  saturated_g: 'saturatesG',
  sodium_mg: 'sodiumMg',
  cholesterol_mg: 'cholesterolMg',
  calcium_mg: 'calciumMg',
  iron_mg: 'ironMg',
  potassium_mg: 'potassiumMg',
  alcohol_g: 'alcoholG',
  vitamin_d_ug: 'vitaminDUg',
};

function partsOf({
  ingredients,
  blank_values_taken_as_zero: blanks = {},
}: Recipe['inputs']): NutritionPart[] {
  return ingredients.map(({ id, grams }) => {
    const row = table.get(id);
    if (!row) throw new Error(`no row ${id}`);
    const zeros = Object.fromEntries(
      (blanks[id] ?? []).flatMap((name) => {
        const nutrient = BLANK[name];
        return nutrient ? [[nutrient, 0]] : [];
      }),
    );
    return { lineId: id, massG: grams, per100: { ...perHundredOfRow(row, details.get(id)), ...zeros } };
  });
}

const shown = (figure: DeclaredFigure | null | undefined) => {
  if (!figure) return 'cannot tell';
  if (figure.lessThan === null) return figure.value;
  if (figure.value === null) return `less than ${figure.lessThan} ${figure.unit}`;
  return `0 g or <${figure.lessThan} g`;
};

/** Names in the cases of what the table gives. */
const PER_100 = {
  protein_g: 'proteinG',
  protein_nx625_g: 'proteinNx625G',
  fat_g: 'fatG',
  saturated_g: 'saturatesG',
  carb_total_g: 'carbohydrateG',
  fibre_g: 'fibreG',
  carb_available_g: 'availableCarbohydrateG',
  sugars_g: 'sugarsG',
  added_sugars_g: 'addedSugarsG',
  alcohol_g: 'alcoholG',
  sodium_mg: 'sodiumMg',
  cholesterol_mg: 'cholesterolMg',
  calcium_mg: 'calciumMg',
  iron_mg: 'ironMg',
  potassium_mg: 'potassiumMg',
} as const;

const US_LINES = {
  calories: 'energy',
  total_fat_g: 'fat',
  saturated_fat_g: 'saturates',
  cholesterol_mg: 'cholesterol',
  sodium_mg: 'sodium',
  total_carbohydrate_g: 'carbohydrate',
  dietary_fiber_g: 'fibre',
  total_sugars_g: 'sugars',
  added_sugars_g: 'addedSugars',
  protein_g: 'protein',
  calcium_mg: 'calcium',
  iron_mg: 'iron',
  potassium_mg: 'potassium',
} as const;

const US_DAILY = {
  total_fat: 'fat',
  saturated_fat: 'saturates',
  cholesterol: 'cholesterol',
  sodium: 'sodium',
  total_carbohydrate: 'carbohydrate',
  dietary_fiber: 'fibre',
  added_sugars: 'addedSugars',
  calcium: 'calcium',
  iron: 'iron',
  potassium: 'potassium',
} as const;

const EU_LINES = {
  energy_kj: 'energyKj',
  energy_kcal: 'energyKcal',
  fat_g: 'fat',
  saturates_g: 'saturates',
  carbohydrate_g: 'carbohydrate',
  sugars_g: 'sugars',
  fibre_g: 'fibre',
  protein_g: 'protein',
  salt_g: 'salt',
} as const;

// Derived: worked twice from the composition of USDA SR28 and Ciqual 2020, the second time in exact fractions.
describe.each(ofKind<Recipe>('recipe'))('Derived recipe $id: $title', ({ inputs, expected }) => {
  const parts = partsOf(inputs);
  const nutrition = nutritionOf(parts, {
    finishedG: inputs.finished_weight_g,
    alcoholKeptFraction: inputs.alcohol_retention ?? 1,
    drainedFatG: 0,
  });
  if (!nutrition) throw new Error('no nutrition');

  it('weighs what went in', () => {
    const ingoingG = parts.reduce((sum, { massG }) => sum + massG, 0);
    close(ingoingG, expected.batch_weight_g, 'ingoing');
    close((inputs.finished_weight_g / ingoingG) * 100, expected.yield_pct, 'yield');
  });

  it('holds per 100 g what its ingredients bring', () => {
    for (const [name, nutrient] of Object.entries(PER_100)) {
      const wanted = expected.per_100g[name];
      if (wanted !== undefined) close(nutrition[nutrient].value, wanted, name);
    }
    close(
      saltEquivalent(nutrition.sodiumMg).value,
      expected.per_100g.salt_equivalent_g ?? Number.NaN,
      'salt',
    );
  });

  it('has one energy by 4-4-9 and another by the factors of the EU', () => {
    close(usEnergy(nutrition).value, expected.energy_per_100g.us_general_4_4_9_kcal ?? Number.NaN, 'US kcal');
    close(euEnergy(nutrition).kj.value, expected.energy_per_100g.eu_kj ?? Number.NaN, 'kJ');
    close(euEnergy(nutrition).kcal.value, expected.energy_per_100g.eu_kcal ?? Number.NaN, 'kcal');
  });

  it('fills the United States panel, rounded by 21 CFR 101.9', () => {
    const rows = new Map(usPanel(nutrition, inputs.serving_g).map((row) => [row.id, row]));
    const wanted = expected.us_panel_per_serving;
    for (const [name, id] of Object.entries(US_LINES))
      expect(shown(rows.get(id)?.declared), name).toBe(wanted[name]);
    close(rows.get('energy')?.exact.value ?? null, wanted.calories_unrounded_4_4_9 as number, 'calories');
    for (const [name, id] of Object.entries(US_DAILY)) {
      expect(rows.get(id)?.percentDv2016, name).toBe((wanted.pct_dv_2016 as Numbers)[name]);
      const old = (wanted.pct_dv_1993_fsis as Numbers)[name];
      if (old !== undefined) expect(rows.get(id)?.percentDv1993, name).toBe(old);
    }
  });

  it('fills the European table, rounded by the guidance of December 2012', () => {
    const rows = new Map(euTable(nutrition).map((row) => [row.id, row]));
    for (const [name, id] of Object.entries(EU_LINES))
      expect(shown(rows.get(id)?.declared), name).toBe(expected.eu_declared_per_100g[name]);
  });

  it('declares quantities as Annex VIII of Regulation (EU) No 1169/2011 says', () => {
    const wanted = Object.entries(expected.quid ?? {});
    const quids = quidOf(
      wanted.map(([name, { grams_used }]) => ({ name, massG: grams_used })),
      expected.batch_weight_g,
      inputs.finished_weight_g,
    );
    expect(quids?.length).toBe(wanted.length);
    for (const [name, { percent_of_finished, declare }] of wanted) {
      const quid = quids?.find((item) => item.name === name);
      close((quid?.ofFinishedFraction ?? 0) * 100, percent_of_finished, name);
      const { as, figure } = quid?.declare ?? { as: 'percent', figure: Number.NaN };
      expect(as === 'percent' ? `${figure}%` : `${figure} g per 100 g of product`, name).toBe(declare);
    }
    const { eu_added_water_pct: water } = expected;
    if (water !== undefined) {
      const othersG = inputs.ingredients
        .filter(({ id }) => id !== 'water')
        .reduce((sum, { grams }) => sum + grams, 0);
      close((addedWaterShare(inputs.finished_weight_g, othersG) ?? 0) * 100, water, 'added water');
    }
  });
});

interface MeatCase {
  inputs: Numbers & { species_class: string };
  expected: Numbers;
}
// Derived: solved twice, the second time straight from the definition. Steps 3 to 7: UK guidance notes of September
// 2003, page 61; M05 is Ciqual 28471, M06 is table 2 of Food Science of Animal Resources 41 (2), 2021.
describe.each(ofKind<MeatCase & { id: string; title: string }>('meat_content'))(
  'Derived meat content $id: $title',
  ({ inputs, expected }) => {
    const limits =
      MEAT_LIMITS[
        inputs.species_class === 'bird_rabbit' ? 'bird-rabbit' : (inputs.species_class as 'pork' | 'mammal')
      ];
    const result = meatContent(
      {
        fatFraction: (inputs.fat_pct ?? 0) / 100,
        proteinFraction: (inputs.meat_protein_pct ?? 0) / 100,
        collagenFraction: (inputs.collagen_pct ?? 0) / 100,
      },
      limits,
    );
    if (!result) throw new Error('no meat');
    const share = (inputs.total_meat_g ?? 0) / (inputs.product_g ?? 1);

    it('is declarable as the method says', () => {
      expect(limits.fatFraction * 100).toBe(inputs.fat_limit_pct);
      expect(limits.collagenOfProteinFraction * 100).toBe(inputs.collagen_limit_pct_of_meat_protein);
      const wanted: readonly (readonly [number, string])[] = [
        [result.collagenOfProteinFraction, 'collagen_pct_of_meat_protein'],
        [result.allowedCollagenFraction, 'allowed_collagen_pct'],
        [result.excessCollagenFraction, 'excess_collagen_pct'],
        [result.excessTissueFraction, 'excess_connective_tissue_pct'],
        [result.allowedFatFraction, 'allowed_fat_pct'],
        [result.excessFatFraction, 'excess_fat_pct'],
        [result.declarableFraction, 'declarable_meat_pct'],
        [result.declarableFraction * share, 'quid_meat_pct'],
        [result.excessFatFraction * share, 'quid_fat_pct'],
        [result.excessTissueFraction * share, 'quid_connective_tissue_pct'],
      ];
      for (const [fraction, name] of wanted) close(fraction * 100, expected[name] ?? Number.NaN, name);
    });
  },
);

interface Ladder {
  expected: Record<string, [number, number | string][]>;
}
describe('Rounding at the edges', () => {
  const [us] = ofKind<Ladder>('rounding_us');
  const [eu] = ofKind<Ladder>('rounding_eu');
  const RULES = {
    calories: US_ROUNDING.energy,
    fat: US_ROUNDING.fat,
    cholesterol: US_ROUNDING.cholesterol,
    sodium: US_ROUNDING.sodium,
    carbohydrate_fiber_sugars_protein: US_ROUNDING.carbohydrate,
    vitamin_mineral_pct: US_ROUNDING.percentDvMineral,
    fat_carbohydrate_sugars_protein_fibre: EU_ROUNDING.grams,
    saturates: EU_ROUNDING.saturates,
    salt: EU_ROUNDING.salt,
  };
  const rungs = [...Object.entries(us?.expected ?? {}), ...Object.entries(eu?.expected ?? {})].flatMap(
    ([name, steps]) => steps.map(([value, declared]) => ({ name, value, declared })),
  );

  it('has every edge of both ladders', () => {
    expect(rungs).toHaveLength(79);
  });

  // Derived from 21 CFR 101.9(c) and from the Commission's guidance of December 2012.
  it.each(rungs)('$name: $value is declared $declared (derived)', ({ name, value, declared }) => {
    expect(shown(declareFigure(value, RULES[name as keyof typeof RULES]))).toBe(declared);
  });
});

interface AtwaterCase {
  expected: {
    id: string;
    factors: [number, number, number];
    alcohol_factor: number;
    computed_kcal: number;
    published_kcal: number;
  }[];
}
// USDA SR28: energies as printed, from the factors as printed.
describe.each(ofKind<AtwaterCase>('published_energy_atwater')[0]?.expected ?? [])(
  'Published energy of $id in SR28',
  ({ id, factors: [protein, fat, carbohydrate], alcohol_factor: alcohol, computed_kcal, published_kcal }) => {
    it('follows from its own factors', () => {
      const row = table.get(id);
      if (!row) throw new Error(`no row ${id}`);
      const food = perHundredOfRow(row, details.get(id));
      const kcal = atwaterKcal(
        {
          proteinG: food.proteinG ?? 0,
          fatG: food.fatG ?? 0,
          carbohydrateG: food.carbohydrateG ?? 0,
          alcoholG: food.alcoholG ?? 0,
        },
        { protein, fat, carbohydrate, alcohol },
      );
      close(kcal, computed_kcal, 'kcal');
      expect(details.get(id)?.energyKcal).toBe(published_kcal);
      published({
        what: `Energy of ${id.replaceAll('-', ' ')} from its own Atwater factors, 100 g`,
        sourceId: 'usda-sr28',
        cited: 'USDA SR28',
        kind: 'printed',
        theirs: published_kcal,
        ours: kcal,
        unit: 'kcal',
        // Printed to a whole kilocalorie, from longer figures.
        within: 1.2,
      });
    });
  },
);

interface EuEnergyCase {
  expected: {
    id: string;
    computed_kj: number;
    computed_kcal: number;
    published_kj: number;
    published_kcal: number;
  }[];
}
// Ciqual 2020: energies by Regulation (EU) No 1169/2011 as printed, to three digits.
describe.each(ofKind<EuEnergyCase>('published_energy_eu')[0]?.expected ?? [])(
  'Published energy of $id in Ciqual 2020',
  ({ id, computed_kj, computed_kcal, published_kj, published_kcal }) => {
    it('follows from the factors of Annex XIV', () => {
      const row = table.get(id);
      if (!row) throw new Error(`no row ${id}`);
      const food = perHundredOfRow(row, details.get(id));
      const d = details.get(id);
      const acids = d?.organicAcidsG ?? 0;
      const polyols = d?.polyolsG ?? 0;
      const energy = (unit: 'kj' | 'kcal') => {
        const f = { kj: [37, 17, 17, 8, 29, 13, 10], kcal: [9, 4, 4, 2, 7, 3, 2.4] }[unit];
        const amounts = [
          food.fatG,
          food.proteinNx625G,
          (food.availableCarbohydrateG ?? 0) - polyols,
          food.fibreG,
          food.alcoholG,
          acids,
          polyols,
        ];
        return amounts.reduce<number>((sum, g, index) => sum + (g ?? 0) * (f[index] ?? 0), 0);
      };
      close(energy('kj'), computed_kj, 'kJ');
      close(energy('kcal'), computed_kcal, 'kcal');
      expect(d?.energyKjEu).toBe(published_kj);
      expect(d?.energyKcalEu).toBe(published_kcal);
      for (const [unit, printed] of [
        ['kj', published_kj],
        ['kcal', published_kcal],
      ] as const)
        published({
          what: `Energy of ${id.replaceAll('-', ' ')} by the factors of Annex XIV, 100 g`,
          sourceId: 'ciqual-2020',
          cited: 'Ciqual 2020',
          kind: 'printed',
          theirs: printed,
          ours: energy(unit),
          unit: unit === 'kj' ? 'kJ' : 'kcal',
          // Printed to a whole unit, from longer figures than the table gives.
          within: Math.max(printed * 0.005, 1),
        });
    });
  },
);

describe('Derived cost of the country pâté', () => {
  it('is the price of what went in, shared among 34 portions', () => {
    // Derived: prices invented, each × grams; 13.20 in all, ÷ 1.9 kg, ÷ 34, ÷ 3.90.
    const [pate] = ofKind<{
      inputs: {
        ingredients: { id: string; grams: number }[];
        price_per_kg: Numbers;
        portions: number;
        finished_weight_g: number;
        selling_price_per_portion: number;
      };
      expected: { cost: Numbers };
    }>('recipe');
    if (!pate) throw new Error('no case');
    const { inputs } = pate;
    const { cost } = pate.expected;
    const purchases = inputs.ingredients.map(({ id, grams }) =>
      purchaseOf(
        {
          lineId: id,
          name: id,
          part: 'garnish',
          massG: grams,
          price: inputs.price_per_kg[id] ?? null,
          priceBasis: 'kg',
          eachMassG: null,
          yieldFraction: 1,
        },
        1,
      ),
    );
    const { total } = foodCost(purchases, 0);
    close(total, cost.batch ?? Number.NaN, 'batch');
    close((total ?? 0) / (inputs.finished_weight_g / 1000), cost.per_kg_finished ?? Number.NaN, 'per kg');
    const perPortion = (total ?? 0) / inputs.portions;
    close(perPortion, cost.per_portion ?? Number.NaN, 'per portion');
    close(
      (foodCostFraction(perPortion, inputs.selling_price_per_portion) ?? 0) * 100,
      cost.food_cost_pct ?? Number.NaN,
      'food cost',
    );
  });
});

listsItsChecks('label');

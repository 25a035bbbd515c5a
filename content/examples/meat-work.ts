import type { BlendMaterial, BlendSlice } from '@larderwright/calc/blend';
import { newBlendMaterial, newBlendSlice } from '@larderwright/calc/blend';
import type { DryCureSlice } from '@larderwright/calc/dry-cure';
import { newDryCurePiece, newDryCureSlice } from '@larderwright/calc/dry-cure';
import type { LinePart } from '@larderwright/calc/formula';
import { enteredEntry } from '@larderwright/calc/quantities';
import { newYieldSlice, newYieldTest, type YieldSlice } from '@larderwright/calc/yield';

/** A raw material by its row of the composition table, with what a kilogram costs. */
export function material(
  id: string,
  name: string,
  part: LinePart,
  ingredientId: string,
  pricePerKg: string,
  more: Partial<BlendMaterial> = {},
): BlendMaterial {
  return {
    ...newBlendMaterial(id, part),
    name,
    ingredientId,
    price: enteredEntry(pricePerKg, 'money'),
    ...more,
  };
}

/** Two free materials brought to one fat, %, in a blend of so many kg; the others go in as they are locked. */
export function leanToFat(
  totalKg: string,
  fatPercent: string,
  [a, b, ...others]: readonly [BlendMaterial, BlendMaterial, ...BlendMaterial[]],
): BlendSlice {
  const { bands, ...blank } = newBlendSlice();
  const target = enteredEntry(fatPercent, '%');
  return {
    ...blank,
    materials: [a, b, ...others],
    total: enteredEntry(totalKg, 'kg'),
    freeA: a.id,
    freeB: b.id,
    fatTarget: target,
    bands: { ...bands, fat: { min: target, max: target } },
  };
}

interface Trial {
  price: string;
  purchasedKg: string;
  /** Grams of each usual pile: lean, fat, garnish, skin and bone, waste. */
  piles: Readonly<Record<'lean' | 'fat' | 'garnish' | 'skin-bone' | 'waste', string>>;
  by: string;
  /** What a kilogram of fat, and of skin and bone, saves elsewhere. */
  worth?: Readonly<Partial<Record<string, string>>>;
  neededKg?: string;
  usual?: readonly [low: string, high: string];
}

/** One trimming, weighed before and after. */
export function trimmed(cut: string, name: string, given: Trial): YieldSlice {
  const test = newYieldTest(cut, 'trial-1');
  const grams: Readonly<Record<string, string>> = given.piles;
  return {
    ...newYieldSlice(),
    tests: [
      {
        ...test,
        name,
        price: enteredEntry(given.price, 'money'),
        parts: test.parts.map((part) => ({
          ...part,
          value: enteredEntry(given.worth?.[part.id] ?? '0', 'money'),
        })),
        needed: given.neededKg === undefined ? test.needed : enteredEntry(given.neededKg, 'kg'),
        usualLow: given.usual ? enteredEntry(given.usual[0], '%') : test.usualLow,
        usualHigh: given.usual ? enteredEntry(given.usual[1], '%') : test.usualHigh,
        trials: test.trials.map((trial) => ({
          ...trial,
          on: '2026-02-17',
          by: given.by,
          purchased: enteredEntry(given.purchasedKg, 'kg'),
          parts: Object.fromEntries(
            test.parts.map(({ id }) => [id, enteredEntry(grams[id] ?? '0', 'g')] as const),
          ),
        })),
      },
    ],
  };
}

/** Pieces salted without nitrite and cooked afterwards: g and mm of each. */
export function saltedPieces(
  salt: string,
  pieces: readonly (readonly [name: string, skinOffG: string, thicknessMm: string])[],
): DryCureSlice {
  return {
    ...newDryCureSlice(),
    product: 'other',
    finish: 'cooked',
    pieces: pieces.map(([name, skinOffG, thicknessMm], at) => ({
      ...newDryCurePiece(`piece-${at + 1}`),
      name,
      skinOff: enteredEntry(skinOffG, 'g'),
      thickness: enteredEntry(thicknessMm, 'mm'),
    })),
    saltTarget: enteredEntry(salt, '%'),
    nitriteTarget: enteredEntry('0', 'ppm'),
    startedOn: '2026-02-16',
  };
}

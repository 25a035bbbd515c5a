/** A crust's paste by parts to 100 of flour. */
export interface Paste {
  readonly id: string;
  readonly name: string;
  /** Parts on 100 of flour, at least and at most. */
  readonly parts: Readonly<
    Record<'fat' | 'egg' | 'water' | 'salt' | 'vinegar', readonly [min: number, max: number]>
  >;
}

/** Pastes of a crust. Common practice, no source. */
export const PASTES: readonly Paste[] = [
  {
    id: 'short',
    name: 'Short paste of butter and lard',
    parts: { fat: [45, 50], egg: [10, 10], water: [18, 24], salt: [1.8, 2.2], vinegar: [1, 2] },
  },
  {
    id: 'hot-water',
    name: 'Hot-water paste',
    parts: { fat: [35, 40], egg: [0, 0], water: [35, 40], salt: [2, 2], vinegar: [0, 0] },
  },
];

/** Grams of one paste. */
export type PasteWeights = Readonly<Record<'flour' | keyof Paste['parts'], number>>;

/**
 * What a mass of pastry is made of, by the middle of each part. Per cent is of the flour, so that the parts add up to
 * far more than a hundred. Derived.
 * @returns null for an unknown paste or what is no mass
 */
export function pasteWeights(pasteId: string, massG: number): PasteWeights | null {
  const paste = PASTES.find(({ id }) => id === pasteId);
  if (!paste || !(massG >= 0) || !Number.isFinite(massG)) return null;
  const middle = ([min, max]: readonly [number, number]) => (min + max) / 2;
  const { fat, egg, water, salt, vinegar } = paste.parts;
  const parts = {
    flour: 100,
    fat: middle(fat),
    egg: middle(egg),
    water: middle(water),
    salt: middle(salt),
    vinegar: middle(vinegar),
  };
  const sum = Object.values(parts).reduce((total, part) => total + part, 0);
  const share = massG / sum;
  return {
    flour: parts.flour * share,
    fat: parts.fat * share,
    egg: parts.egg * share,
    water: parts.water * share,
    salt: parts.salt * share,
    vinegar: parts.vinegar * share,
  };
}

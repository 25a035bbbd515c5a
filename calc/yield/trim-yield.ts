import { compensatedSum } from '../quantities/index.ts';
import type { TrimRole } from './slice.ts';

const G_PER_KG = 1000;

/** A pile weighed. Null is unknown, never nothing. */
export interface WeighedPart {
  readonly role: TrimRole;
  readonly massG: number | null;
  /** Only a by-product has a value that counts. */
  readonly valuePerKg: number | null;
}

/** What one trial says. Shares are of the purchase. */
export interface TrimYield {
  readonly partFractions: readonly (number | null)[];
  readonly usableG: number | null;
  readonly usableFraction: number | null;
  /** Bought and found in no pile: drip, scraps on the board, a slip of the pen. Below zero: more found than bought. */
  readonly unaccountedG: number | null;
  readonly unaccountedFraction: number | null;
  /** What the by-products are worth, money. */
  readonly creditMoney: number | null;
  /** Edible-portion cost of a kilogram: (price paid − credit) ÷ usable. */
  readonly costPerUsableKg: number | null;
  /** The same with no credit: price paid ÷ usable. */
  readonly costWithoutCreditPerKg: number | null;
  /** Usable kilogram ÷ purchased kilogram in price: what one multiplies a new market price by. */
  readonly costFactor: number | null;
}

function sumIfKnown(values: readonly (number | null)[]): number | null {
  const known = values.filter((value) => value !== null);
  return known.length === values.length ? compensatedSum(known) : null;
}

function divide(top: number | null, bottom: number | null): number | null {
  return top === null || bottom === null || !(bottom > 0) ? null : top / bottom;
}

/**
 * One trim test: yield = usable ÷ purchased, cost of the usable kilogram = (price paid − value of by-products) ÷
 * usable, cost factor = that cost ÷ purchase price. A blank pile or value makes unknown whatever hangs on it.
 * Common practice, no source: the butcher's test of cookery schools. Derived: mass balance.
 *
 * @param purchasedG as purchased, g
 * @param perKg purchase price of a kilogram
 * @example 10 kg at 6.00, lean 7 kg, fat 2 kg worth 1.50: yield 70 %, (60 − 3) ÷ 7 = 8.14 a kg, factor 1.357
 */
export function trimYield(
  purchasedG: number | null,
  perKg: number | null,
  parts: readonly WeighedPart[],
): TrimYield {
  const boughtG = purchasedG !== null && purchasedG > 0 ? purchasedG : null;
  const usable = parts.filter(({ role }) => role === 'usable');
  const usableG = usable.length > 0 ? sumIfKnown(usable.map(({ massG }) => massG)) : null;
  const foundG = parts.length > 0 ? sumIfKnown(parts.map(({ massG }) => massG)) : null;
  const unaccountedG = boughtG === null || foundG === null ? null : boughtG - foundG;
  const creditMoney = sumIfKnown(
    parts
      .filter(({ role }) => role === 'by-product')
      .map(({ massG, valuePerKg }) => worth(massG, valuePerKg)),
  );
  const paid = boughtG === null || perKg === null ? null : (boughtG / G_PER_KG) * perKg;
  const usableKg = usableG === null ? null : usableG / G_PER_KG;
  const costPerUsableKg = paid === null || creditMoney === null ? null : divide(paid - creditMoney, usableKg);
  return {
    partFractions: parts.map(({ massG }) => divide(massG, boughtG)),
    usableG,
    usableFraction: divide(usableG, boughtG),
    unaccountedG,
    unaccountedFraction: divide(unaccountedG, boughtG),
    creditMoney,
    costPerUsableKg,
    costWithoutCreditPerKg: divide(paid, usableKg),
    costFactor: divide(costPerUsableKg, perKg),
  };
}

/** Nothing of something is worth nothing, whatever its price. */
function worth(massG: number | null, valuePerKg: number | null): number | null {
  if (massG === 0 || valuePerKg === 0) return 0;
  return massG === null || valuePerKg === null ? null : (massG / G_PER_KG) * valuePerKg;
}

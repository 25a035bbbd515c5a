import type { LinePart } from '../formula/index.ts';
import { compensatedSum, toBase } from '../quantities/index.ts';
import { purchaseG } from '../yield/index.ts';
import type { PriceBasis } from './slice.ts';

/** A line ready to be bought. Null is unknown. */
export interface LineToBuy {
  readonly lineId: string;
  readonly name: string;
  readonly part: LinePart;
  /** In the formula as written, g. */
  readonly massG: number | null;
  readonly price: number | null;
  readonly priceBasis: PriceBasis;
  readonly eachMassG: number | null;
  readonly yieldFraction: number | null;
}

/** A line of the shopping list. */
export interface Purchase {
  readonly lineId: string;
  readonly name: string;
  readonly part: LinePart;
  /** Into the bowl, g. */
  readonly massG: number | null;
  /** To buy, g: into the bowl ÷ yield. */
  readonly purchaseG: number | null;
  /** Pieces that is, exactly and rounded up, for a price each. */
  readonly pieces: { readonly exact: number; readonly whole: number } | null;
  /** Money; null while unknown, 0 for a line in the sundries. */
  readonly cost: number | null;
}

const G_PER_KG = 1000;
const G_PER_LB = toBase(1, 'lb');
/** The noise of dividing decimal weights. */
const NOISE = 1e-9;

function product(one: number | null, other: number | null): number | null {
  return one === null || other === null ? null : one * other;
}

/**
 * One line as bought for a batch `factor` times the formula. Cost is purchase × price: what is trimmed away was paid
 * for. A price each counts pieces exactly, not rounded up: the rest of the egg is used elsewhere.
 */
export function purchaseOf(line: LineToBuy, factor: number): Purchase {
  const massG = product(line.massG, factor);
  const buyG = massG === null || line.yieldFraction === null ? null : purchaseG(massG, line.yieldFraction);
  const exact =
    line.priceBasis === 'each' && buyG !== null && line.eachMassG !== null && line.eachMassG > 0
      ? buyG / line.eachMassG
      : null;
  return {
    lineId: line.lineId,
    name: line.name,
    part: line.part,
    massG,
    purchaseG: buyG,
    pieces: exact === null ? null : { exact, whole: Math.ceil(exact - NOISE) },
    cost: costOf(line, buyG, exact),
  };
}

function costOf({ price, priceBasis }: LineToBuy, buyG: number | null, pieces: number | null): number | null {
  switch (priceBasis) {
    case 'sundries':
      return 0;
    case 'each':
      return product(pieces, price);
    case 'kg':
      return product(buyG === null ? null : buyG / G_PER_KG, price);
    case 'lb':
      return product(buyG === null ? null : buyG / G_PER_LB, price);
  }
}

/** Costs of a batch, money. `known` counts what is priced so far and is a floor, not the answer. */
export function foodCost(
  purchases: readonly Purchase[],
  sundries: number | null,
): { readonly total: number | null; readonly known: number } {
  const costs = [...purchases.map(({ cost }) => cost), sundries];
  const known = costs.filter((cost) => cost !== null);
  const sum = compensatedSum(known);
  return { total: known.length === costs.length && purchases.length > 0 ? sum : null, known: sum };
}

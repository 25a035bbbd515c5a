import type { Price } from '../plan/index.ts';
import type { Cut, Packed } from './cut.ts';

/** Null is unknown. */
export interface SlicingValues {
  /** Finished mass of all moulds, and of one. */
  readonly finishedG: number | null;
  readonly perMouldG: number | null;
  readonly lengthMm: number | null;
  /** One mould cut to a thickness. */
  readonly cut: Cut | null;
  /** All of it cut by mass. */
  readonly packed: Packed | null;
  readonly slices: number | null;
  readonly portions: number | null;
  readonly portionG: number | null;
  /** What is sold as slices or portions, g. */
  readonly soldG: number | null;
  /** Food cost, money. */
  readonly foodPerPortion: number | null;
  readonly pricePerPortion: Price;
  readonly pricePerSlice: Price;
  readonly pricePerKg: Price;
  readonly pricePerLb: Price;
}

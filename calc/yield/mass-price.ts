import { toBase } from '../quantities/index.ts';
import type { MassPriceBasis } from './slice.ts';

const G_PER_KG = toBase(1, 'kg');

/**
 * A price per kilogram from a price per kilogram or pound. Nothing is rounded.
 * @example pricePerKg(4.5359237, 'lb') // 10
 */
export function pricePerKg(price: number, basis: MassPriceBasis): number {
  return (price * G_PER_KG) / toBase(1, basis);
}

/** A price per pound from a price per kilogram: the pound is 0.45359237 kg exactly. */
export function perPound(perKg: number): number {
  return (perKg * toBase(1, 'lb')) / G_PER_KG;
}

import type { Mark, SourceId } from '../../sources/index.ts';
import type { LinePart } from '../slice.ts';

/** A working range as fractions 0–1, both ends included, with the usual value where the trade has one. */
export interface Band {
  readonly min: number;
  readonly max: number;
  readonly usual?: number;
}

/** Nitrite a family is usually made with, mg/kg as sodium nitrite. Taste and colour, never a limit. */
export interface NitriteHabit {
  readonly minPpm: number;
  readonly maxPpm: number;
  /** As often made without. */
  readonly optional: boolean;
  readonly of: 'meat block' | 'liver';
}

/** A share that a law ties to a product's name. Shown with its source; not a safety limit. */
export interface NamedShare {
  /** The names it goes with. */
  readonly name: string;
  readonly what: string;
  /** The share of the mix that can be compared with it; null: shown, not compared. */
  readonly compare: 'liver' | 'fat' | null;
  readonly min?: number;
  readonly max?: number;
  readonly source: SourceId;
  readonly mark: Mark;
}

/** Habits of one product family. Ranges give notes, never stops: food outside them may be good. */
export interface Family {
  readonly id: string;
  /** Its number in the family table. */
  readonly number: number;
  readonly name: string;
  /** Parts as fractions of everything in the bowl. */
  readonly parts: Readonly<Partial<Record<LinePart, Band>>>;
  /** Fat a laboratory would find. */
  readonly chemicalFat: Band | null;
  /** Salt from all sources. */
  readonly salt: Band | null;
  /** What the salt range is counted on. */
  readonly saltOf: 'total' | 'finished product' | 'meat' | 'jelly';
  readonly nitrite: NitriteHabit | null;
  readonly sugar: Band | null;
  readonly pepperGPerKg: readonly [min: number, max: number] | null;
  readonly spiceGPerKg: readonly [min: number, max: number] | null;
  /** Spirit or fortified wine before reduction. */
  readonly spirit: Band | null;
  readonly gelatine: { readonly of: string; readonly band: Band } | null;
  readonly remark: string;
  readonly named: readonly NamedShare[];
}

/** How every range of the table is known. */
export const FAMILY_SOURCE: SourceId = 'trade-formula-norms';
export const FAMILY_MARK: Mark = 'common-practice';

const PER_CENT = 100;

/** A band written in per cent, as the trade says it. */
export function percent(min: number, max: number, usual?: number): Band {
  const band = { min: min / PER_CENT, max: max / PER_CENT };
  return usual === undefined ? band : { ...band, usual: usual / PER_CENT };
}

/** Nitrite as often left out as used. */
export function maybeNitrite(
  minPpm: number,
  maxPpm: number,
  of: NitriteHabit['of'] = 'meat block',
): NitriteHabit {
  return { minPpm, maxPpm, optional: true, of };
}

/** Nitrite that belongs to the family. */
export function usualNitrite(minPpm: number, maxPpm: number): NitriteHabit {
  return { minPpm, maxPpm, optional: false, of: 'meat block' };
}

/** What a family has when its row does not say. */
export const UNSTATED = {
  parts: {},
  chemicalFat: null,
  salt: null,
  saltOf: 'total',
  nitrite: null,
  sugar: null,
  pepperGPerKg: null,
  spiceGPerKg: null,
  spirit: null,
  gelatine: null,
  remark: '',
  named: [],
} as const satisfies Partial<Family>;

import type { CompositionTable, Ingredient } from '../ingredients/index.ts';
import { entryValue, readEntry } from '../quantities/index.ts';
import type { FormulaLine } from './slice.ts';

export const COMPONENTS = ['water', 'protein', 'fat', 'salt'] as const;
export type Component = (typeof COMPONENTS)[number];

/** Where a fraction comes from: read off the pack, the composition table, the nature of the part, or nowhere. */
export type CompositionOrigin = 'declared' | 'table' | 'part' | 'unknown';

export interface KnownFraction {
  readonly fraction: number | null;
  readonly from: CompositionOrigin;
}

export type LineComposition = Readonly<Record<Component, KnownFraction>>;

/** The fields of a line that its composition is read from. */
export type CompositionFields = Pick<FormulaLine, 'part' | 'ingredientId' | 'declared' | 'cure'>;

const UNKNOWN: KnownFraction = { fraction: null, from: 'unknown' };
const NONE: KnownFraction = { fraction: 0, from: 'part' };
/** A "salt" line whose table row is less than this is no common salt, and the row is believed. */
const MOSTLY_SALT = 0.9;

const TABLE_FIELD = {
  water: 'waterFraction',
  protein: 'proteinFraction',
  fat: 'fatFraction',
  salt: 'saltFraction',
} as const satisfies Record<Component, keyof Ingredient>;

/**
 * Salt in a curing salt: what its nitrite and nitrate leave, by mass. Null until both are typed from the pack; a blank
 * nitrate is unknown, not none.
 */
export function curingSaltNaClFraction(line: Pick<FormulaLine, 'cure'>): number | null {
  if (!line.cure) return null;
  const nitrite = entryValue('fraction', line.cure.nitrite);
  const nitrate = entryValue('fraction', line.cure.nitrate);
  if (nitrite === null || nitrate === null || nitrite + nitrate > 1) return null;
  return 1 - nitrite - nitrate;
}

function byPart(
  line: CompositionFields,
  component: Component,
  row: Ingredient | undefined,
): KnownFraction | null {
  if (line.part === 'curing-salt') {
    if (component !== 'salt') return NONE;
    const fraction = curingSaltNaClFraction(line);
    return fraction === null ? UNKNOWN : { fraction, from: 'declared' };
  }
  if (line.part === 'salt' && (row?.saltFraction ?? 1) >= MOSTLY_SALT)
    return component === 'salt' ? { fraction: 1, from: 'part' } : NONE;
  return null;
}

/**
 * What a line is made of, as mass fractions. The pack outranks the nature of the part, which outranks the table. A
 * field with an unreadable text makes its value unknown: the table must not stand in for what somebody tried to type.
 */
export function lineComposition(line: CompositionFields, table: CompositionTable): LineComposition {
  const row = line.ingredientId === null ? undefined : table.get(line.ingredientId);
  const of = (component: Component): KnownFraction => {
    const declared = readEntry('fraction', line.declared[component]);
    if (declared.state === 'ok') return { fraction: declared.value, from: 'declared' };
    if (declared.state === 'bad') return UNKNOWN;
    const natural = byPart(line, component, row);
    if (natural) return natural;
    const fraction = row?.[TABLE_FIELD[component]] ?? null;
    return fraction === null ? UNKNOWN : { fraction, from: 'table' };
  };
  return { water: of('water'), protein: of('protein'), fat: of('fat'), salt: of('salt') };
}

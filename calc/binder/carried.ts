import { type CompositionTable, joinAllergens } from '../ingredients/index.ts';
import { compensatedSum, type Entry, readEntry } from '../quantities/index.ts';
import type { BinderValues, Carried } from './values.ts';

/** A mass with its composition fields. */
export interface CarryingPart {
  readonly id: string;
  readonly massG: number | null;
  readonly ingredientId: string | null;
  readonly salt: Entry;
  readonly water: Entry;
}

type Field = 'salt' | 'water';

/** Mass fraction of a component: off the pack, else the table, else unknown. An unreadable text is unknown. */
export function fractionOf(
  part: Pick<CarryingPart, 'ingredientId' | 'salt' | 'water'>,
  field: Field,
  table: CompositionTable,
): number | null {
  const typed = readEntry('fraction', part[field]);
  if (typed.state === 'ok') return typed.value;
  if (typed.state === 'bad' || part.ingredientId === null) return null;
  const row = table.get(part.ingredientId);
  return (field === 'salt' ? row?.saltFraction : row?.waterFraction) ?? null;
}

function sumOf(parts: readonly CarryingPart[], field: Field, table: CompositionTable): number | null {
  const masses = parts.map((part) => {
    if (part.massG === 0) return 0;
    const fraction = fractionOf(part, field, table);
    return part.massG === null || fraction === null ? null : part.massG * fraction;
  });
  const known = masses.filter((mass) => mass !== null);
  return known.length === masses.length ? compensatedSum(known) : null;
}

/**
 * Salt and water that parts bring, g. Water that a panade loses in the pan is told apart by `steamG`: salt stays.
 * @param steamG lost in cooking; null is unknown
 */
export function carriedBy(
  parts: readonly CarryingPart[],
  steamG: number | null,
  table: CompositionTable,
): Carried {
  const waterG = sumOf(parts, 'water', table);
  return {
    saltG: sumOf(parts, 'salt', table),
    waterG: waterG === null || steamG === null ? null : Math.max(0, waterG - steamG),
  };
}

/** Allergens of parts, and the ids of those nobody has told. A part of 0 g is none. */
export function allergensOf(
  parts: readonly CarryingPart[],
  table: CompositionTable,
): Pick<BinderValues, 'euAllergens' | 'usAllergens' | 'allergensUnknown'> {
  const used = parts.filter(({ massG }) => massG !== 0);
  const rows = used.map(({ id, ingredientId }) => ({
    id,
    row: ingredientId === null ? undefined : table.get(ingredientId),
  }));
  const known = rows.flatMap(({ row }) => row ?? []);
  return {
    euAllergens: joinAllergens(known.map(({ euAllergens }) => euAllergens)),
    usAllergens: joinAllergens(known.map(({ usAllergens }) => usAllergens)),
    allergensUnknown: rows.filter(({ row }) => row === undefined).map(({ id }) => id),
  };
}

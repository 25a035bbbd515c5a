import { compensatedSum } from '../quantities/index.ts';
import type { MeatGroup } from './meat-groups.ts';
import type { LabelPart } from './parts.ts';
import { quidOf } from './quid.ts';
import type { DeclaredQuantity } from './values.ts';

interface Stressed {
  readonly name: string;
  readonly lineIds: readonly string[];
  readonly massG: number;
  readonly settled: boolean;
}

/** Stressed ingredients by their name; meat with what of it counts as meat. Null while a weight is unknown. */
function stressed(parts: readonly LabelPart[], groups: readonly MeatGroup[]): Stressed[] | null {
  const byName = new Map<string, LabelPart[]>();
  const wanted = new Set(
    parts.filter((part) => part.stressed).map(({ name }) => name.toLocaleLowerCase('en')),
  );
  for (const part of parts) {
    const key = part.name.toLocaleLowerCase('en');
    // A name that is stressed covers all that is listed under it.
    if (wanted.has(key)) byName.set(key, [...(byName.get(key) ?? []), part]);
  }
  const all = [...byName.values()];
  if (all.flat().some(({ massG }) => massG === null)) return null;
  return all.map((members) => {
    const lineIds = members.map(({ id }) => id);
    const massG = compensatedSum(members.map((part) => part.massG ?? 0));
    const group = groups.find((item) => item.lineIds.some((id) => lineIds.includes(id)));
    const name = members[0]?.name ?? '';
    if (!group) return { name, lineIds, massG, settled: true };
    if (!group.content) return { name, lineIds, massG, settled: false };
    const tooMuch = (group.massG ?? 0) * (1 - group.content.declarableFraction);
    return { name, lineIds, massG: Math.max(0, massG - tooMuch), settled: true };
  });
}

/**
 * What is declared of each ingredient that the name of the food stresses. Meat counts within the limits of its animal;
 * where its collagen is not known the figure is the most it can be, and says so.
 */
export function quantitiesToDeclare(
  parts: readonly LabelPart[],
  groups: readonly MeatGroup[],
  ingoingG: number | null,
  finishedG: number | null,
): DeclaredQuantity[] | null {
  const named = stressed(parts, groups);
  if (named === null || ingoingG === null || finishedG === null) return null;
  const quids = quidOf(named, ingoingG, finishedG);
  return (
    quids?.flatMap((quid, index) => {
      const item = named[index];
      return item
        ? [
            {
              ...quid,
              lineIds: item.lineIds,
              state: item.settled ? ('settled' as const) : ('cannot-tell' as const),
            },
          ]
        : [];
    }) ?? null
  );
}

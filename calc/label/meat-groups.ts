import { compensatedSum } from '../quantities/index.ts';
import { MEAT_LIMITS, type MeatClass, type MeatContent, meatContent } from './meat-content.ts';
import { speciesName } from './names.ts';
import type { LabelPart } from './parts.ts';

/** All meat of one name in the list: one animal, one set of limits. */
export interface MeatGroup {
  readonly name: string;
  /** What its fat and connective tissue are called after. */
  readonly animal: string;
  readonly meatClass: MeatClass;
  readonly lineIds: readonly string[];
  readonly massG: number | null;
  /** Null: cannot tell, because of `unknown`. */
  readonly content: MeatContent | null;
  readonly unknown: readonly {
    readonly lineId: string;
    readonly what: 'collagen' | 'fat' | 'protein' | 'mass';
  }[];
}

const NEEDED = [
  ['collagen', 'collagenFraction'],
  ['fat', 'fatFraction'],
  ['protein', 'proteinFraction'],
  ['mass', 'massG'],
] as const;

/**
 * Meat by the name it is sold under, with what of it may be declared as meat. Collagen is typed from an analysis or taken
 * from a published cut; no other figure stands in for it.
 */
export function meatGroups(parts: readonly LabelPart[]): MeatGroup[] {
  const groups = new Map<string, LabelPart[]>();
  for (const part of parts) {
    if (part.meatClass === null || part.massG === 0) continue;
    const key = `${part.meatClass}\u0000${part.name.toLocaleLowerCase('en')}`;
    groups.set(key, [...(groups.get(key) ?? []), part]);
  }
  return [...groups.values()].flatMap((members): MeatGroup[] => {
    const [first] = members;
    if (!first?.meatClass) return [];
    const unknown = members.flatMap((part) =>
      NEEDED.flatMap(([what, field]) => (part[field] === null ? [{ lineId: part.id, what }] : [])),
    );
    const massG = members.some((part) => part.massG === null)
      ? null
      : compensatedSum(members.map((part) => part.massG ?? 0));
    const mean = (field: 'fatFraction' | 'proteinFraction' | 'collagenFraction') =>
      compensatedSum(members.map((part) => (part.massG ?? 0) * (part[field] ?? 0))) / (massG ?? 1);
    return [
      {
        name: first.name,
        animal: first.row ? speciesName(first.row.species) : first.name,
        meatClass: first.meatClass,
        lineIds: members.map(({ id }) => id),
        massG,
        content:
          unknown.length > 0 || !massG
            ? null
            : meatContent(
                {
                  fatFraction: mean('fatFraction'),
                  proteinFraction: mean('proteinFraction'),
                  collagenFraction: mean('collagenFraction'),
                },
                MEAT_LIMITS[first.meatClass],
              ),
        unknown,
      },
    ];
  });
}

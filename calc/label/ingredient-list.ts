import { curingSaltNaClFraction } from '../formula/index.ts';
import type { Allergen } from '../ingredients/index.ts';
import { compensatedSum, entryValue } from '../quantities/index.ts';
import { additiveOf, NITRATE, NITRITE } from './additives.ts';
import { emphasise, namesOfAllergen, saysKind, type TextPart } from './allergen-classes.ts';
import type { MeatGroup } from './meat-groups.ts';
import type { LabelPart } from './parts.ts';

/** One thing to be listed, before like is put to like. */
interface Listable {
  readonly lineId: string;
  readonly name: string;
  readonly massG: number | null;
  readonly madeOf: string;
  readonly allergens: readonly Allergen[];
}

/** One entry of the list. */
export interface ListedIngredient {
  readonly name: string;
  readonly lineIds: readonly string[];
  readonly massG: number | null;
  /** Of everything that went in. */
  readonly ofIngoingFraction: number | null;
  /** The entry as it reads, allergens marked to stand out. */
  readonly text: readonly TextPart[];
}

/** Law an additive is named by. */
export type ListFor = 'eu' | 'us';

function curingSalt(part: LabelPart, law: ListFor): Listable[] {
  const { line, massG } = part;
  const salt = line ? curingSaltNaClFraction(line) : null;
  const nitrite = line?.cure ? entryValue('fraction', line.cure.nitrite) : null;
  const nitrate = line?.cure ? entryValue('fraction', line.cure.nitrate) : null;
  const base = { lineId: part.id, madeOf: '', allergens: [] };
  if (salt === null || nitrite === null || nitrate === null)
    return [{ ...base, name: part.name, massG, madeOf: `salt, ${NITRITE[law]}` }];
  const of = (fraction: number) => (massG === null ? null : massG * fraction);
  return [
    { ...base, name: 'salt', massG: of(salt) },
    ...(nitrite > 0 ? [{ ...base, name: NITRITE[law], massG: of(nitrite) }] : []),
    ...(nitrate > 0 ? [{ ...base, name: NITRATE[law], massG: of(nitrate) }] : []),
  ];
}

function listable(part: LabelPart, law: ListFor): Listable[] {
  if (part.line?.part === 'curing-salt') return curingSalt(part, law);
  const additive = part.name === part.proposed ? additiveOf(part.row?.id) : undefined;
  return [
    {
      lineId: part.id,
      name: additive ? additive[law] : part.name,
      massG: part.massG,
      madeOf: part.madeOf,
      allergens: (law === 'us' ? part.usAllergens : part.euAllergens).filter(({ toCheck }) => !toCheck),
    },
  ];
}

/** Meat over its limits: the part that may not be called meat is listed by its own name. */
function overLimits(groups: readonly MeatGroup[], items: readonly Listable[]): Listable[] {
  let list = [...items];
  for (const { content, lineIds, animal, massG } of groups) {
    if (!content || massG === null || content.declarableFraction >= 1) continue;
    list = list.map((item) =>
      lineIds.includes(item.lineId) && item.massG !== null
        ? { ...item, massG: item.massG * content.declarableFraction }
        : item,
    );
    const more = (what: string, fraction: number): Listable[] =>
      fraction > 0
        ? [
            {
              lineId: lineIds[0] ?? '',
              name: `${animal} ${what}`,
              massG: massG * fraction,
              madeOf: '',
              allergens: [],
            },
          ]
        : [];
    list.push(
      ...more('fat', content.excessFatFraction),
      ...more('connective tissue', content.excessTissueFraction),
    );
  }
  return list;
}

function text(name: string, madeOf: string, allergens: readonly Allergen[]): TextPart[] {
  const whole = madeOf === '' ? name : `${name} (${madeOf})`;
  const parts = emphasise(whole);
  const said = whole.toLocaleLowerCase('en');
  const more = [
    ...new Set(allergens.filter((allergen) => !saysKind(said, allergen)).flatMap(namesOfAllergen)),
  ].filter((word) => !said.includes(word.toLocaleLowerCase('en')));
  if (more.length === 0) return parts;
  const added = more.flatMap((word, index): TextPart[] => [
    { text: index === 0 ? ' (' : ', ', allergen: false },
    { text: word, allergen: true },
  ]);
  return [...parts, ...added, { text: ')', allergen: false }];
}

/** Most first; what weighs the same goes by the alphabet; an unknown weight goes last. */
function byMass(
  a: { massG: number | null; name: string },
  b: { massG: number | null; name: string },
): number {
  return (b.massG ?? -1) - (a.massG ?? -1) || a.name.localeCompare(b.name, 'en');
}

/**
 * The ingredient list in falling weight of what went in: Regulation (EU) No 1169/2011, Annex VII part A; 21 CFR 101.4(a).
 * Ingredients of one name and make are put together. A curing salt is listed as the salt and the preservatives in it.
 * Nothing is moved to the end for being little, which both laws allow and neither asks.
 */
export function ingredientList(
  parts: readonly LabelPart[],
  groups: readonly MeatGroup[],
  law: ListFor,
): ListedIngredient[] {
  const items = overLimits(
    law === 'eu' ? groups : [],
    parts.filter(({ massG }) => massG !== 0).flatMap((part) => listable(part, law)),
  );
  const merged = new Map<string, Listable[]>();
  for (const item of items) {
    const key = `${item.name.toLocaleLowerCase('en')}\u0000${item.madeOf.toLocaleLowerCase('en')}`;
    merged.set(key, [...(merged.get(key) ?? []), item]);
  }
  const ingoingG = items.some(({ massG }) => massG === null)
    ? null
    : compensatedSum(items.map(({ massG }) => massG ?? 0));
  return [...merged.values()]
    .flatMap((same): ListedIngredient[] => {
      const [first] = same;
      if (!first) return [];
      const massG = same.some((item) => item.massG === null)
        ? null
        : compensatedSum(same.map((item) => item.massG ?? 0));
      return [
        {
          name: first.name,
          lineIds: [...new Set(same.map(({ lineId }) => lineId))],
          massG,
          ofIngoingFraction: massG === null || !ingoingG ? null : massG / ingoingG,
          text: text(
            first.name,
            first.madeOf,
            same.flatMap(({ allergens }) => allergens),
          ),
        },
      ];
    })
    .sort(byMass);
}

/** One allergen class with the kinds in it: tree nuts (walnut). */
export interface Allergen {
  readonly name: string;
  readonly kinds: readonly string[];
  /** Depends on the maker: read the label. */
  readonly toCheck: boolean;
}

const CHECK = 'check';

/**
 * Read an allergen cell: classes parted by `;`, kinds and the word `check` in brackets.
 * @example parseAllergens('mustard; cereals containing gluten (barley, check)')
 */
export function parseAllergens(cell: string): Allergen[] {
  return cell
    .split(';')
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .map((part) => {
      const [, name = part, inside = ''] = /^([^(]+?)\s*(?:\(([^)]*)\))?$/.exec(part) ?? [];
      const words = inside
        .split(',')
        .map((word) => word.trim())
        .filter((word) => word !== '');
      return { name, kinds: words.filter((word) => word !== CHECK), toCheck: words.includes(CHECK) };
    });
}

/**
 * Allergens of several ingredients together, each class once, kinds joined. A class stays "to check" only while no
 * ingredient has it for certain. Sorted by name.
 */
export function joinAllergens(lists: Iterable<readonly Allergen[]>): Allergen[] {
  const byName = new Map<string, Allergen>();
  for (const allergen of [...lists].flat()) {
    const known = byName.get(allergen.name);
    byName.set(allergen.name, {
      name: allergen.name,
      kinds: [...new Set([...(known?.kinds ?? []), ...allergen.kinds])].sort(),
      toCheck: allergen.toCheck && (known?.toCheck ?? true),
    });
  }
  return [...byName.values()].sort((a, b) => a.name.localeCompare(b.name, 'en'));
}

import type { Allergen } from '../ingredients/index.ts';

/** One of the fourteen of the EU and the UK. The name is the one the composition table uses. */
export interface AllergenClass {
  readonly id: string;
  readonly name: string;
  /** Its place among the nine of the United States; null: none of them. */
  readonly us: string | null;
  /** Words that name it in a list and must stand out. */
  readonly words: readonly string[];
}

const GLUTEN_WORDS = ['wheat', 'rye', 'barley', 'oats', 'oat', 'spelt', 'gluten', 'semolina'];
const NUT_WORDS = 'almond hazelnut walnut cashew pecan pistachio macadamia nut'.split(' ');

/**
 * Regulation (EU) No 1169/2011, Annex II, in its order; the United Kingdom kept it. Beside it the nine major allergens
 * of the United States (Food Allergen Labeling and Consumer Protection Act, and FASTER Act), of which cereals are wheat
 * alone, and shellfish crustaceans alone.
 */
export const ALLERGEN_CLASSES: readonly AllergenClass[] = [
  { id: 'gluten', name: 'cereals containing gluten', us: 'wheat', words: GLUTEN_WORDS },
  {
    id: 'crustaceans',
    name: 'crustaceans',
    us: 'crustacean shellfish',
    words: ['crustacean', 'prawn', 'shrimp', 'crab', 'lobster', 'crayfish'],
  },
  { id: 'eggs', name: 'eggs', us: 'egg', words: ['egg'] },
  { id: 'fish', name: 'fish', us: 'fish', words: ['fish', 'anchovy', 'salmon', 'trout', 'cod', 'pike'] },
  { id: 'peanuts', name: 'peanuts', us: 'peanuts', words: ['peanut'] },
  { id: 'soybeans', name: 'soybeans', us: 'soybeans', words: ['soya', 'soy', 'soybean'] },
  {
    id: 'milk',
    name: 'milk',
    us: 'milk',
    words: ['milk', 'buttermilk', 'butter', 'cream', 'cheese', 'whey', 'yogurt'],
  },
  { id: 'nuts', name: 'nuts', us: 'tree nuts', words: NUT_WORDS },
  { id: 'celery', name: 'celery', us: null, words: ['celery', 'celeriac'] },
  { id: 'mustard', name: 'mustard', us: null, words: ['mustard'] },
  { id: 'sesame', name: 'sesame', us: 'sesame', words: ['sesame'] },
  { id: 'sulphites', name: 'sulphites', us: null, words: ['sulphites', 'sulfites', 'sulphur dioxide'] },
  { id: 'lupin', name: 'lupin', us: null, words: ['lupin'] },
  {
    id: 'molluscs',
    name: 'molluscs',
    us: null,
    words: ['mollusc', 'scallop', 'mussel', 'oyster', 'squid', 'clam'],
  },
];

/** A class by its id. */
export function allergenClassOf(id: string): AllergenClass | undefined {
  return ALLERGEN_CLASSES.find((item) => item.id === id);
}

/** What the United States call a class that a person ticked: only wheat of the cereals is one, so it is to be checked. */
export function ticked(ids: readonly string[]): { eu: Allergen[]; us: Allergen[] } {
  const classes = ids.flatMap((id) => allergenClassOf(id) ?? []);
  return {
    eu: classes.map(({ name }) => ({ name, kinds: [], toCheck: false })),
    us: classes.flatMap(({ us }) => (us === null ? [] : [{ name: us, kinds: [], toCheck: false }])),
  };
}

/** What must be read in a list where a class is in an ingredient: its kinds where they are known, else the class. */
export function namesOfAllergen({ name, kinds }: Allergen): readonly string[] {
  if (kinds.length > 0) return kinds;
  return [name === 'eggs' ? 'egg' : name === 'soybeans' ? 'soya' : name];
}

/** Whether a text already says which cereal or nut it is: then the name of the whole class adds nothing. */
export function saysKind(text: string, { name, kinds }: Allergen): boolean {
  const words =
    name === 'nuts' || name === 'tree nuts'
      ? NUT_WORDS
      : name === 'cereals containing gluten'
        ? GLUTEN_WORDS
        : [];
  return (
    kinds.length === 0 &&
    emphasise(text).some(
      (part) => part.allergen && words.some((word) => part.text.toLowerCase().startsWith(word)),
    )
  );
}

/** A piece of a list: to stand out, or not. */
export interface TextPart {
  readonly text: string;
  readonly allergen: boolean;
}

const ALL_WORDS = ALLERGEN_CLASSES.flatMap(({ words }) => words).toSorted((a, b) => b.length - a.length);
const WORDS = new RegExp(`(?<!\\p{L})(?:${ALL_WORDS.join('|')})(?:s|es)?(?!\\p{L})`, 'giu');
/** Foods that carry the word and not the allergen. */
const FALSE_FRIENDS =
  /coconut\s+(?:milk|cream)|(?:cocoa|shea)\s+butter|cream\s+of\s+tartar|buckwheat|nutmeg/giu;

/** Cuts a text so that the names of allergens in it can stand out. */
export function emphasise(text: string): TextPart[] {
  const masked = text.replace(FALSE_FRIENDS, (found) => '\u0000'.repeat(found.length));
  const parts: TextPart[] = [];
  let from = 0;
  for (const found of masked.matchAll(WORDS)) {
    if (found.index > from) parts.push({ text: text.slice(from, found.index), allergen: false });
    parts.push({ text: text.slice(found.index, found.index + found[0].length), allergen: true });
    from = found.index + found[0].length;
  }
  if (from < text.length) parts.push({ text: text.slice(from), allergen: false });
  return parts;
}

import { ALLERGEN_CLASSES } from '@larderwright/calc/label';
import type { Mark } from '@larderwright/calc/sources';

export interface AllergenRow {
  readonly id: string;
  readonly name: string;
  /** Where it comes in, in this work. */
  readonly hides: string;
}

export interface AllergenList {
  readonly id: string;
  readonly title: string;
  readonly notes: readonly string[];
  readonly source: string;
  readonly mark: Mark;
  readonly classes: readonly AllergenRow[];
}

interface InTheKitchen {
  /** What the law adds to the name of the class. */
  readonly adds?: string;
  readonly hides: string;
  /** Where the United States count less of it, or ask for more in its name. */
  readonly usAdds?: string;
  readonly usHides?: string;
}

const CEREALS = 'Bread and flour panade, pastry, rusk';

/** What this kitchen knows of each class of calc/label. */
const KITCHEN: Readonly<Record<string, InTheKitchen>> = {
  gluten: {
    adds: ': wheat, rye, barley, oats',
    hides: `${CEREALS}, beer, malt vinegar, some stock cubes`,
    usHides: CEREALS,
  },
  crustaceans: { hides: 'Prawn or lobster garnish, shellfish butter and stock', usAdds: ', by its kind' },
  eggs: { hides: 'The binder, egg wash, egg white in a mousseline, clarified stock' },
  fish: {
    hides: 'Fish mousseline, anchovy, fish sauce, brown table sauces, some gelatine',
    usAdds: ', by its kind',
  },
  peanuts: { hides: 'Oil, bought sauces, nut mixes' },
  soybeans: { hides: 'Soy sauce, isolated protein, lecithin in release spray' },
  milk: {
    adds: ', lactose included',
    hides: 'Cream, butter, milk in a panade, cheese, dried milk in a bought seasoning',
  },
  nuts: {
    adds: ': almond, hazelnut, walnut, cashew, pecan, Brazil, pistachio, macadamia',
    hides: 'Pistachio, hazelnut, walnut and almond garnish, nut oil',
    usAdds: ', by their kind',
  },
  celery: { adds: ' and celeriac', hides: 'Stock, stock cubes, celery salt, vegetable curing powders' },
  mustard: { hides: 'Seed in a brine, prepared mustard, bought spice mixes' },
  sesame: { adds: ' seeds', hides: 'Crackers, bread, oil, some spice mixes' },
  sulphites: {
    adds: ' and sulphur dioxide, above 10 mg/kg or mg/L',
    hides: 'Wine, fortified wine, dried fruit, vinegar, some sausage mixes',
  },
  lupin: { hides: 'Lupin flour in bought pastry' },
  molluscs: { hides: 'Scallop mousseline, squid, oyster sauce' },
};

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function inKitchen(id: string): InTheKitchen {
  const found = KITCHEN[id];
  if (!found)
    throw new Error(`content/reference/allergens.ts has no words for the class "${id}" of calc/label.`);
  return found;
}

/** The classes the law names, as calc/label carries them. A formula's own list comes from its ingredients, not from here. */
export const ALLERGEN_LISTS: readonly AllergenList[] = [
  {
    id: 'eu-uk-14',
    title: 'European Union and United Kingdom: fourteen classes',
    notes: ['Shown in the list of ingredients by bolder or other type, each time.'],
    source: 'eu-1169-2011',
    mark: 'confirmed',
    classes: ALLERGEN_CLASSES.map(({ id, name }) => {
      const { adds = '', hides } = inKitchen(id);
      return { id, name: `${capital(name)}${adds}`, hides };
    }),
  },
  {
    id: 'us-9',
    title: 'United States: nine major allergens',
    notes: [
      'Chestnut and coconut are off the list of tree nuts since January 2025. Sulphites have a rule of their own.',
    ],
    source: 'us-major-allergens',
    mark: 'memory',
    classes: ALLERGEN_CLASSES.flatMap(({ id, us }) => {
      if (us === null) return [];
      const { hides, usAdds = '', usHides = hides } = inKitchen(id);
      return [{ id: `us-${us.replaceAll(' ', '-')}`, name: `${capital(us)}${usAdds}`, hides: usHides }];
    }),
  },
];

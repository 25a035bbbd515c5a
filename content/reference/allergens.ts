import type { Mark } from '@larderwright/calc/sources';

export interface AllergenClass {
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
  readonly classes: readonly AllergenClass[];
}

const MILK = 'Cream, butter, milk in a panade, cheese, dried milk in a bought seasoning';
const EGG = 'The binder, egg wash, egg white in a mousseline, clarified stock';
const FISH = 'Fish mousseline, anchovy, fish sauce, brown table sauces, some gelatine';
const CRUSTACEAN = 'Prawn or lobster garnish, shellfish butter and stock';
const NUTS = 'Pistachio, hazelnut, walnut and almond garnish, nut oil';
const PEANUT = 'Oil, bought sauces, nut mixes';
const SOYA = 'Soy sauce, isolated protein, lecithin in release spray';
const SESAME = 'Crackers, bread, oil, some spice mixes';

/** The classes the law names. A formula's own list comes from its ingredients, not from here. */
export const ALLERGEN_LISTS: readonly AllergenList[] = [
  {
    id: 'eu-uk-14',
    title: 'European Union and United Kingdom: fourteen classes',
    notes: ['Shown in the list of ingredients by bolder or other type, each time.'],
    source: 'eu-1169-2011',
    mark: 'confirmed',
    classes: [
      {
        id: 'gluten',
        name: 'Cereals with gluten: wheat, rye, barley, oats',
        hides: 'Bread and flour panade, pastry, rusk, beer, malt vinegar, some stock cubes',
      },
      { id: 'crustaceans', name: 'Crustaceans', hides: CRUSTACEAN },
      { id: 'eggs', name: 'Eggs', hides: EGG },
      { id: 'fish', name: 'Fish', hides: FISH },
      { id: 'peanuts', name: 'Peanuts', hides: PEANUT },
      { id: 'soybeans', name: 'Soybeans', hides: SOYA },
      { id: 'milk', name: 'Milk, lactose included', hides: MILK },
      {
        id: 'nuts',
        name: 'Nuts: almond, hazelnut, walnut, cashew, pecan, Brazil, pistachio, macadamia',
        hides: NUTS,
      },
      {
        id: 'celery',
        name: 'Celery and celeriac',
        hides: 'Stock, stock cubes, celery salt, vegetable curing powders',
      },
      { id: 'mustard', name: 'Mustard', hides: 'Seed in a brine, prepared mustard, bought spice mixes' },
      { id: 'sesame', name: 'Sesame seeds', hides: SESAME },
      {
        id: 'sulphites',
        name: 'Sulphur dioxide and sulphites, above 10 mg/kg or mg/L',
        hides: 'Wine, fortified wine, dried fruit, vinegar, some sausage mixes',
      },
      { id: 'lupin', name: 'Lupin', hides: 'Lupin flour in bought pastry' },
      { id: 'molluscs', name: 'Molluscs', hides: 'Scallop mousseline, squid, oyster sauce' },
    ],
  },
  {
    id: 'us-9',
    title: 'United States: nine major allergens',
    notes: [
      'Chestnut and coconut are off the list of tree nuts since January 2025. Sulphites have a rule of their own.',
    ],
    source: 'us-major-allergens',
    mark: 'memory',
    classes: [
      { id: 'us-milk', name: 'Milk', hides: MILK },
      { id: 'us-egg', name: 'Eggs', hides: EGG },
      { id: 'us-fish', name: 'Fish, by its kind', hides: FISH },
      { id: 'us-crustacean', name: 'Crustacean shellfish, by its kind', hides: CRUSTACEAN },
      { id: 'us-nuts', name: 'Tree nuts, by their kind', hides: NUTS },
      { id: 'us-peanut', name: 'Peanuts', hides: PEANUT },
      { id: 'us-wheat', name: 'Wheat', hides: 'Bread and flour panade, pastry, rusk' },
      { id: 'us-soy', name: 'Soybeans', hides: SOYA },
      { id: 'us-sesame', name: 'Sesame', hides: SESAME },
    ],
  },
];

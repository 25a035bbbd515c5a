import type { Ingredient } from '../ingredients/index.ts';

/** Meat is named by its animal. Words for the animal that are not the table's own. */
const MEAT_OF: Readonly<Record<string, string>> = {
  deer: 'venison',
  hen: 'chicken',
  cow: 'beef',
};
/** Words that say how a raw material is sold and not what it is. */
const SALE_WORDS =
  /\s*\((?!egg)[^)]*\)|,?\s*(rindless|trimmed|glands out|boneless|skinless|france|farmed|wild|raw|sweated|cold|crusts off|blanched and squeezed|blanched|drained|unsalted|salted|whole|lean and fat|lean only|ground|dried|fresh)\b/gi;

/** The animal a meat is sold as. */
export function speciesName(species: string): string {
  return MEAT_OF[species] ?? species;
}

function plain(name: string): string {
  const text = name.replace(SALE_WORDS, '').replace(/\s+/g, ' ').trim();
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/**
 * A first proposal for how a list names an ingredient: the animal for meat, its fat, skin or liver by name, the food
 * without how it is sold. A person's own words stand in for it where it does not fit.
 *
 * @param lineName the kitchen's own words, for an ingredient without a row
 * @param isMeat it counts as meat: throat and jowl too, which stand on the shelf of fats
 */
export function proposedName(row: Ingredient | undefined, lineName: string, isMeat: boolean): string {
  if (!row) return plain(lineName);
  const animal = speciesName(row.species);
  switch (row.category) {
    case 'meat':
      return animal;
    case 'fat-tissue':
    case 'rendered-fat':
      if (isMeat) return animal;
      return row.id.includes('lard') ? 'lard' : `${animal} fat`;
    case 'skin':
      return row.species === 'pork' ? 'pork rind' : `${animal} skin`;
    case 'water':
      return 'water';
    default:
      return plain(row.name.split(',')[0] ?? row.name);
  }
}

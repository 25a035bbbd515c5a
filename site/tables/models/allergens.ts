import { ALLERGEN_LISTS } from '../../../content/reference/allergens.ts';
import { column, type TablePart } from '../../lib/table-model.ts';

/** What the law names, list by list. */
export const allergens: readonly TablePart[] = ALLERGEN_LISTS.map(
  ({ id, title, notes, source, mark, classes }) => ({
    id,
    title,
    notes,
    sources: [source],
    columns: [column('Allergen'), column('Where it comes in')],
    rows: classes.map(({ id: name, name: label, hides }) => ({
      id: name,
      cells: [label, hides],
      mark,
      words: ['allergen', 'allergy'],
    })),
  }),
);

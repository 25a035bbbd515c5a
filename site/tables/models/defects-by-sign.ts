import { PLACES } from '../../../content/schemas.ts';
import { plainWords } from '../../../content/words.ts';
import type { Book } from '../../lib/book.ts';
import { bySafety, placeSlug, placeTitle } from '../../lib/defect-places.ts';
import { SAFETY_WORDS } from '../../lib/safety-words.ts';
import { column, type TablePart } from '../../lib/table-model.ts';
import { urls } from '../../lib/urls.ts';

/** Every defect by where it shows, what may be a safety matter first. */
export function defectsBySign({ defects }: Book): readonly TablePart[] {
  return PLACES.map((place) => ({
    id: `at-${placeSlug(place)}`,
    title: placeTitle(place),
    notes: [],
    sources: ['common-practice'],
    columns: [column('Defect'), column('Sign'), column('Check first'), column('Safety')],
    rows: defects
      .filter(({ data }) => data.where.includes(place))
      .sort(bySafety)
      .map(({ id, data }) => ({
        id: `${placeSlug(place)}-${id}`,
        href: urls.defect(id),
        cells: [
          data.title,
          plainWords(data.looks.join(' ')),
          plainWords(data.checkFirst),
          SAFETY_WORDS[data.safety].word,
        ],
        mark: 'common-practice' as const,
      })),
  })).filter(({ rows }) => rows.length > 0);
}

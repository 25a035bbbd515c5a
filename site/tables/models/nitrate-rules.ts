import { NITRATE_RULES } from '../../../content/reference/nitrate.ts';
import { column, type TablePart } from '../../lib/table-model.ts';

/** What laws say of nitrate, in their own words. */
export const nitrateRules: readonly TablePart[] = [
  {
    id: 'nitrate',
    title: 'Nitrate, as laws write it',
    notes: [
      'For reading a law or a pack. No worksheet works out a dose of nitrate: that is for an accepted process. Nothing cooked on this site needs it.',
    ],
    sources: [...new Set(NITRATE_RULES.map(({ source }) => source))],
    columns: [column('Where, for what'), column('Nitrate')],
    rows: NITRATE_RULES.map(({ id, where, rule, mark }) => ({
      id,
      cells: [where, rule],
      mark,
      words: ['nitrate limit', 'saltpetre'],
    })),
  },
];

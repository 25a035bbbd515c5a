import { KEEPING_GROUPS } from '../../../content/reference/storage.ts';
import { column, type TablePart } from '../../lib/table-model.ts';

/** How long things keep, by whose word. */
export const storageTimes: readonly TablePart[] = KEEPING_GROUPS.map(
  ({ id, title, notes, sources, times }) => ({
    id,
    title,
    notes,
    sources,
    columns: [column('Food'), column('Chilled'), column('Frozen'), column('Note')],
    rows: times.map((time) => ({
      id: time.id,
      cells: [time.food, time.chilled, time.frozen, time.note || '–'],
      mark: time.mark,
      words: ['how long does it keep', 'shelf life', 'use by'],
    })),
  }),
);

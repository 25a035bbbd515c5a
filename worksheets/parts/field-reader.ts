import { atom } from 'nanostores';
import * as say from '#words/parts/field-reader.ts';
import { $life } from '../state/store.ts';
import type { FieldSays, readField } from './read-field.ts';

type ReadField = (...asked: Parameters<typeof readField>) => FieldSays;

const saysNothing: ReadField = () => ({});

/**
 * What reads the number fields of the page. An untouched page holds nothing but blanks and shipped defaults,
 * so the reader is fetched with the first batch; until then a field says nothing about its text.
 */
export const $fieldReader = atom<ReadField>(saysNothing);

if (typeof document !== 'undefined') {
  $life.subscribe((life) => {
    if (life !== 'open' || $fieldReader.get() !== saysNothing) return;
    import('./read-field.ts').then(
      ({ readField }) => $fieldReader.set(readField),
      () => $fieldReader.set(() => ({ problem: say.fieldCannotCheckedNowReload })),
    );
  });
}

import { atom } from 'nanostores';
import * as say from '#words/parts/field-reader.ts';
import { $life } from '../state/store.ts';
import type { FieldSays, readField } from './read-field.ts';

type ReadField = (...asked: Parameters<typeof readField>) => FieldSays;

const saysNothing: ReadField = () => ({});

/**
 * What reads the number fields of the page. An untouched page holds nothing but blanks and shipped defaults, so the
 * reader is fetched with the first batch or the first text typed; until then a field says nothing about its text.
 */
export const $fieldReader = atom<ReadField>(saysNothing);

/** Fetches the reader, once. A draft is typed before there is a batch, so fields ask for it too. */
export function fetchFieldReader(): void {
  if ($fieldReader.get() !== saysNothing) return;
  import('./read-field.ts').then(
    ({ readField }) => $fieldReader.set(readField),
    () => $fieldReader.set(() => ({ problem: say.fieldCannotCheckedNowReload })),
  );
}

if (typeof document !== 'undefined') {
  $life.subscribe((life) => {
    if (life === 'open') fetchFieldReader();
  });
}

import type { Params } from '@larderwright/calc/findings';
import { inOrder } from './limit-temp.ts';
import type { Wording } from './wording.ts';

type Catalogue = Readonly<Record<string, (params: Params) => Wording>>;

const catalogue: Record<string, (params: Params) => Wording> = {};

/** Adds the words of a subject. A worksheet calls it for the stages it shows. */
export function learnWords(words: Catalogue): void {
  Object.assign(catalogue, words);
}

/** The words of a finding or verdict reason. An id without words is a programming error. */
export function wordsOf(id: string, params: Params): Wording {
  const wording = catalogue[id];
  if (!wording) throw new Error(`No words for ${id}`);
  const { title, body } = wording(params);
  return { title: inOrder(title), body: inOrder(body) };
}

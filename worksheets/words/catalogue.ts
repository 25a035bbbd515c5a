import type { Slot } from './slot.ts';

/** What stands for a text, a sentence with values or a table of texts in another language. */
type Said<English> = English extends string
  ? string
  : English extends (...values: infer Values) => infer Sentence
    ? (...values: Values) => [Slot] extends [Sentence] ? Slot : Said<Sentence>
    : English extends object
      ? { readonly [Name in keyof English]: Said<English[Name]> }
      : English;

/** What another language must have for one file of this folder: the same names, with the same values in their sentences. */
export type Like<File> = { readonly [Name in keyof File]: Said<File[Name]> };

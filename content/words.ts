import { figurePlain } from './figures/figure-text.ts';
import { FIGURES, type Figure, figureNamed } from './figures/index.ts';

/** A stretch of words, or a figure named in them. */
export type Run =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'figure'; readonly figure: Figure };

const NAMED = /\{([a-z0-9-]+)\}/;

/**
 * Reads a sentence of the data files, in which `{chill-limit}` stands for a figure.
 * @throws when a figure is named that is not there
 */
export function readWords(sentence: string): Run[] {
  return sentence
    .split(NAMED)
    .map(
      (part, at): Run =>
        at % 2 === 0 ? { kind: 'text', text: part } : { kind: 'figure', figure: named(part, sentence) },
    )
    .filter((run) => run.kind === 'figure' || run.text !== '');
}

/** The same sentence as plain text, for the search index. */
export function plainWords(sentence: string): string {
  return readWords(sentence)
    .map((run) => (run.kind === 'text' ? run.text : figurePlain(run.figure)))
    .join('');
}

function named(id: string, sentence: string): Figure {
  const figure = figureNamed(id);
  if (figure) return figure;
  throw new Error(
    `The sentence "${sentence}" names figure {${id}}, and there is none. Known: ${Object.keys(FIGURES).join(', ')}.`,
  );
}

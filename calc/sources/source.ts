/**
 * How a figure is known.
 * `confirmed`: read in the source or a faithful copy. `memory`: written from memory, unchecked.
 * `derived`: arithmetic on other figures. `common-practice`: a habit of the trade, no source.
 */
export type Mark = 'confirmed' | 'memory' | 'derived' | 'common-practice';

/** A law, standard, paper or table that figures rest on. */
export interface Source {
  /** Name as a reader would cite it. */
  readonly title: string;
  readonly issuer: string;
  /** Edition or date of the text the figures were taken from. */
  readonly edition: string;
  /** ISO date on which a person last compared our figures with the text. */
  readonly reviewed: string;
  readonly mark: Mark;
  /** What of it is not certain, or which copy was not read. */
  readonly note?: string;
}

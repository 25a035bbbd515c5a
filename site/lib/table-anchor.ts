/** One place of a table page: where it is, what it is called, what it holds in words. */
export interface Anchor {
  readonly id: string;
  readonly label: string;
  readonly words: readonly string[];
  /** A single row, or a whole part with a heading. */
  readonly isRow: boolean;
}

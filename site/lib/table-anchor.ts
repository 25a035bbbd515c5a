/** One part of a table page: where it is, what it is called, what it holds in words. */
export interface Anchor {
  readonly id: string;
  readonly label: string;
  readonly words: readonly string[];
}

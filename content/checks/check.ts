/** One published figure held against ours by a test. The lists beside this file are written by the tests. */
export interface PublishedCheck {
  /** What is computed, in words. */
  readonly what: string;
  /** Id in the register of sources, where the source stands there. */
  readonly sourceId?: string | undefined;
  /** The source as the test names it. */
  readonly cited: string;
  /**
   * `printed`: the source prints the answer. `inputs`: it prints what goes in, and the answer is arithmetic on it.
   * `measured`: somebody measured it.
   */
  readonly kind: 'printed' | 'inputs' | 'measured';
  readonly theirs: number;
  /** Six significant digits. */
  readonly ours: number;
  readonly unit: string;
  /** How far ours may be from theirs, in the unit. Null: shown and not held to anything. */
  readonly within: number | null;
  readonly note?: string | undefined;
}

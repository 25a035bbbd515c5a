import type { Mark } from './source.ts';
import type { SourceId } from './source-of.ts';

/**
 * What every dated table of limits says of itself, whatever the limits. A subject extends it with its own rows.
 * Rule sets are picked by a person and never averaged or blended.
 */
export interface RuleSet {
  readonly id: string;
  readonly title: string;
  /** Whose rule it is, as a reader would say it: "United States, federal plants". */
  readonly jurisdiction: string;
  /** Edition or date of the text. */
  readonly edition: string;
  /** ISO date on which a person last compared the figures with the text. */
  readonly reviewed: string;
  readonly sources: readonly SourceId[];
  /** How the set as a whole is known; rows may be known less well. */
  readonly mark: Mark;
}

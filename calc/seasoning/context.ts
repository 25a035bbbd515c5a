export interface SeasoningContext {
  /** Everything in the bowl by the formula, g; null when unknown. */
  readonly totalG: number | null;
  /** Today's ISO date, for the age of a ground blend; null leaves the age unjudged. */
  readonly today: string | null;
}

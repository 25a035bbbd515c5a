/** What a trim test may have to say. */
export type YieldFindingId =
  | 'yield.unaccounted'
  | 'yield.more-than-bought'
  | 'yield.one-trial'
  | 'yield.outside-usual'
  | 'yield.usual-reversed'
  | 'yield.credit-over-cost';

/** What the chill budget may have to say. Quality of the bind; safety is judged elsewhere. */
export type ChillBudgetFindingId =
  | 'chill-budget.end-too-warm'
  | 'chill-budget.pass-too-warm'
  | 'chill-budget.rechill-now'
  | 'chill-budget.start-too-warm'
  | 'chill-budget.fat-too-warm'
  | 'chill-budget.too-hard'
  | 'chill-budget.ice-over-liquid'
  | 'chill-budget.ice-is-added-water'
  | 'chill-budget.ice-melts-nothing'
  | 'chill-budget.pre-chill-too-cold'
  | 'chill-budget.ice-too-warm';

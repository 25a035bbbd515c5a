/** What a plan may have to say. */
export type PlanFindingId =
  | 'plan.chiller-over'
  | 'plan.bath-over'
  | 'plan.last-mould-low'
  | 'plan.moulds-too-few'
  | 'plan.part-pieces'
  | 'plan.taste-aromatics'
  | 'plan.loss-outside-band'
  | 'plan.loss-is-all'
  | 'plan.yield-is-none'
  | 'plan.too-late'
  | 'plan.not-a-date'
  | 'plan.most-under-least'
  | 'plan.no-price';

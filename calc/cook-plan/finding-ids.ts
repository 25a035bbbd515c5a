/** What the cook plan may have to say. */
export type CookPlanFindingId =
  | 'cook-plan.never-reaches'
  | 'cook-plan.hold-not-met'
  | 'cook-plan.counts-on-carry-over'
  | 'cook-plan.come-up-slow'
  | 'cook-plan.cools-too-slowly'
  | 'cook-plan.chill-ends-early'
  | 'cook-plan.chill-starts-late'
  | 'cook-plan.cure-not-shown'
  | 'cook-plan.mix-assumed'
  | 'cook-plan.pan-full'
  | 'cook-plan.water-over-pan'
  | 'cook-plan.water-over-rim'
  | 'cook-plan.water-low'
  | 'cook-plan.bath-below-target';

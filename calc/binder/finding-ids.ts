/** What the worksheet of binders and garnish may have to say. */
export type BinderFindingId =
  | 'binder.panade-over'
  | 'binder.panade-warm'
  | 'binder.panade-differs'
  | 'binder.cream-over'
  | 'binder.garnish-over'
  | 'binder.piece-too-large'
  | 'binder.piece-over-usual'
  | 'binder.raw-allium'
  | 'binder.wet-garnish'
  | 'binder.allergens'
  | 'binder.allergens-unknown'
  | 'binder.within-limit'
  | 'binder.over-limit'
  | 'binder.cannot-tell';

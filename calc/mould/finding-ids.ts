/** What the mould worksheet may have to say. */
export type MouldFindingId =
  | 'mould.water-differs'
  | 'mould.chill-depth'
  | 'mould.headspace-small'
  | 'mould.no-room'
  | 'mould.stands-or-lies'
  | 'mould.density-unusual'
  | 'mould.film-rating'
  | 'mould.lining-in-formula'
  | 'mould.fill-differs'
  | 'mould.last-mould-low'
  | 'mould.moulds-short'
  | 'mould.batch-short';

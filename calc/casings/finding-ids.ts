/** What the casings worksheet may have to say. */
export type CasingsFindingId =
  | 'casings.outside-size'
  | 'casings.label-is-not-stuffed'
  | 'casings.fullness'
  | 'casings.spare-outside-habit'
  | 'casings.link-outside-habit'
  | 'casings.species'
  | 'casings.peel'
  | 'casings.heats-slower'
  | 'casings.links-off-target'
  | 'casings.no-link';

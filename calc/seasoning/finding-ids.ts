/** What the seasoning worksheet may have to say. */
export type SeasoningFindingId =
  | 'seasoning.over-ceiling'
  | 'seasoning.no-ceiling'
  | 'seasoning.outside-dose'
  | 'seasoning.too-small-to-weigh'
  | 'seasoning.diluted-in-salt'
  | 'seasoning.still-too-small'
  | 'seasoning.taste-aromatics'
  | 'seasoning.allergens'
  | 'seasoning.allergens-unknown'
  | 'seasoning.cross-reaction'
  | 'seasoning.natural-nitrate'
  | 'seasoning.raw-garlic'
  | 'seasoning.raw-ginger'
  | 'seasoning.carries-salt'
  | 'seasoning.old-ground'
  | 'seasoning.many-spices';

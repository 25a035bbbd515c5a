import type { Finding } from '../findings/index.ts';

/** What the label may have to say. */
export type LabelFindingId =
  | 'label.name-without-meat'
  | 'label.whole-bowl-filled'
  | 'label.heavier-than-mix'
  | 'label.juices-lost'
  | 'label.made-of-unknown'
  | 'label.curing-salt-unsplit'
  | 'label.cure-not-listed'
  | 'label.nitrite-named'
  | 'label.allergen-unknown'
  | 'label.allergen-to-check'
  | 'label.allergens-told'
  | 'label.allergens-open'
  | 'label.crust-not-counted'
  | 'label.told-twice'
  | 'label.kitchen-figures'
  | 'label.small-blanks'
  | 'label.meat-limit-unknown'
  | 'label.over-meat-limits'
  | 'label.quantities-in-grams'
  | 'label.added-water'
  | 'label.susceptible-audience'
  | 'label.nitrite-for-infants'
  | 'label.best-before'
  | 'label.sealed-too-long'
  | 'label.hurdle-salt-short'
  | 'label.past-seven-days'
  | 'label.stored-warm'
  | 'label.packing-moves-nothing'
  | 'label.two-cook-dates'
  | 'label.date-agrees'
  | 'label.date-too-late'
  | 'label.date-unknown'
  | 'label.life-is-default';

export type LabelFinding = Finding<LabelFindingId>;

import type { Finding } from '../findings/index.ts';

/** Everything a formula can tell a person. */
export type FormulaFindingId =
  | 'formula.percent-over-100'
  | 'formula.no-anchor'
  | 'formula.curing-salt-in-percent'
  | 'formula.declared-over-100'
  | 'formula.unknown-ingredient'
  | 'formula.composition-unknown'
  | 'formula.small-parts-left-out'
  | 'formula.partly-weighed'
  | 'formula.weighed-off-plan'
  | 'formula.salt-over-supplied'
  | 'formula.salt-off-target'
  | 'formula.lining-salt'
  | 'formula.outside-band'
  | 'formula.named-share'
  | 'formula.allergens-unknown';

export type FormulaFinding = Finding<FormulaFindingId>;

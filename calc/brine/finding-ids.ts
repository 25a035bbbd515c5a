import type { MuscleFindingId, MuscleReason } from '../dry-cure/index.ts';
import type { Finding } from '../findings/index.ts';

/** What the brine worksheet may have to say, and the reasons of its verdicts. */
export type BrineFindingId =
  | MuscleReason<'brine'>
  | MuscleFindingId<'brine'>
  // Verdicts on accelerator, phosphate and pumped bacon.
  | 'brine.additive-within'
  | 'brine.additive-over'
  | 'brine.additive-unknown'
  | 'brine.additive-uptake-unknown'
  | 'brine.additive-wrong-form'
  | 'brine.additive-not-at-level'
  | 'brine.bacon-level-met'
  | 'brine.bacon-level-alternative'
  | 'brine.bacon-level-missed'
  | 'brine.bacon-level-unknown'
  // Findings.
  | 'brine.skin-estimated'
  | 'brine.methods-differ'
  | 'brine.worst-case-over'
  | 'brine.gallon-assumption'
  | 'brine.strong-is-timed'
  | 'brine.timed-needs-pick-up'
  | 'brine.cure-brings-too-much-salt'
  | 'brine.cannot-dissolve'
  | 'brine.reused'
  | 'brine.old'
  | 'brine.use-unknown'
  | 'brine.much-brine'
  | 'brine.core-uncured'
  | 'brine.days-short'
  | 'brine.added-water'
  | 'brine.pump-differs'
  | 'brine.phosphate-over'
  | 'brine.accelerator-over'
  | 'brine.accelerator-last'
  | 'brine.needles';

export type BrineFinding = Finding<BrineFindingId>;

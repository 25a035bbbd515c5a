import type { Finding } from '../findings/index.ts';
import type { LimitReason } from './judge-limit.ts';

/** What the cure worksheet may have to say, and the reasons of its verdicts. */
export type CureFindingId =
  | LimitReason
  // Reasons of verdicts beside those of a limit.
  | 'cure.no-rule-set'
  | 'cure.rule-set-unknown'
  | 'cure.no-nitrate'
  | 'cure.nitrate-specialist'
  // Stops.
  | 'cure.over-limit'
  | 'cure.residual-over-limit'
  | 'cure.above-every-ceiling'
  | 'cure.gross-error'
  | 'cure.nitrate-present'
  | 'cure.strength-missing'
  | 'cure.strength-too-weak'
  | 'cure.strength-too-strong'
  | 'cure.pure-chemical'
  | 'cure.grams-only'
  | 'cure.entered-as-another-part'
  | 'cure.too-small-to-weigh'
  | 'cure.target-over-ceiling'
  | 'cure.target-and-carried-over-ceiling'
  | 'cure.target-above-strength'
  // Cautions.
  | 'cure.nitrate-blank'
  | 'cure.carried-bound'
  | 'cure.vegetable-nitrite'
  | 'cure.near-ceiling'
  | 'cure.no-plain-salt'
  | 'cure.named-like-curing-salt'
  | 'cure.same-person'
  | 'cure.fish'
  | 'cure.fresh-sausage'
  // Notes.
  | 'cure.second-person-missing'
  | 'cure.scale-unknown'
  | 'cure.colour-only'
  | 'cure.keep-refrigerated-policy'
  | 'cure.not-called-cured'
  | 'cure.liver-takes-nitrite'
  | 'cure.one-lever'
  | 'cure.not-for-infants'
  | 'cure.lock-up';

export type CureFinding = Finding<CureFindingId>;

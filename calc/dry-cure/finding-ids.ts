import type { Finding } from '../findings/index.ts';
import type { MuscleReason } from './judge.ts';
import type { MuscleFindingId } from './muscle-findings.ts';

/** What the dry-cure worksheet may have to say, and the reasons of its verdicts. */
export type DryCureFindingId =
  | MuscleReason<'dry-cure'>
  | MuscleFindingId<'dry-cure'>
  | 'dry-cure.skin-estimated'
  | 'dry-cure.salt-outside-habit'
  | 'dry-cure.cure-brings-too-much-salt'
  | 'dry-cure.thick'
  | 'dry-cure.thumb-rule-outside-range'
  | 'dry-cure.nitrite-lags'
  | 'dry-cure.dried-specialist'
  | 'dry-cure.time-is-guidance';

export type DryCureFinding = Finding<DryCureFindingId>;

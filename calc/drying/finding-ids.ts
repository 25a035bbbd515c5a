import type { Finding } from '../findings/index.ts';

/** What the drying worksheet may have to say, and the reasons of its verdicts. */
export type DryingFindingId =
  // Verdicts.
  | 'drying.approved-plan'
  | 'drying.degree-hours-within'
  | 'drying.degree-hours-over'
  | 'drying.degree-hours-running'
  | 'drying.degree-hours-unknown'
  | 'drying.no-degree-hour-rule'
  // Findings.
  | 'drying.hold-product'
  | 'drying.estimate-is-wet'
  | 'drying.loss-is-no-proof'
  | 'drying.ratio-is-no-proof'
  | 'drying.loss-over-water'
  | 'drying.gained-weight'
  | 'drying.salt-under-table'
  | 'drying.casing-over-table'
  | 'drying.trichinella'
  | 'drying.case-hardening';

export type DryingFinding = Finding<DryingFindingId>;

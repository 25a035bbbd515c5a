import type { Entry } from '../quantities/index.ts';

export interface CureSlice {
  /** Rule set the nitrite limit is read from; null until a person chooses. */
  ruleSetId: string | null;
  /** Wanted ingoing nitrite, mg/kg as NaNO2 on the rule set's weight basis. */
  nitriteTarget: Entry;
  /** Smallest step the scale shows, g. */
  scaleReadability: Entry;
  /** Who weighed and who checked the curing salt. */
  weighedBy: string;
  checkedBy: string;
}

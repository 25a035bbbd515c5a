import type { Entry } from '../quantities/index.ts';

/** The form a laboratory gives what it found in. */
export type ResidualForm = 'sodium-nitrite' | 'nitrite-ion' | 'nitrite-and-nitrate-as-sodium-nitrite';

/** What a laboratory found left in the finished product. */
export interface ResidualNitrite {
  /** mg/kg. */
  found: Entry;
  /** Null until somebody reads the form off the report. */
  as: ResidualForm | null;
  /** Laboratory, date and number of the report. */
  report: string;
}

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
  /** Absent: nothing has been measured. */
  residual?: ResidualNitrite;
}

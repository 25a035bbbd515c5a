import type { Entry } from '../quantities/index.ts';

/** One thermometer and its last check. */
export interface Thermometer {
  id: string;
  /** As it is marked. */
  name: string;
  /** What it shows in stirred crushed ice and water. */
  ice: Entry;
  /** What it shows in boiling water. */
  boil: Entry;
  /** Smallest step of its display. */
  step: Entry;
  /** How far it may still be off either way after the check. Blank: unknown. */
  error: Entry;
  /** ISO date of the check; '' while unknown. */
  checkedOn: string;
  checkedBy: string;
}

/** The check of the kitchen's thermometers and the place they were checked in. */
export interface ThermometerSlice {
  /** Height of the kitchen above sea level, m. */
  altitude: Entry;
  /** Pressure at the kitchen itself, not reduced to sea level. It rules where it is filled in. */
  pressure: Entry;
  /** Most a thermometer may be off in either check, ± °C difference. */
  tolerance: Entry;
  /** Days a check is good for. */
  goodFor: Entry;
  thermometers: Thermometer[];
}

import type { Entry } from '../quantities/index.ts';

/** What is dried. Null: nothing is. */
export type DryingKind = 'fermented-sausage' | 'dried-muscle';

/** Whose degree-hours a fermentation is counted by. */
export type DegreeHourRule = 'us-fahrenheit' | 'canada-celsius';

/** A stretch of the fermentation at one chamber temperature, before pH 5.3. */
export interface FermentationStep {
  id: string;
  temp: Entry;
  hours: Entry;
}

/** Drying room times against Trichinella, method 6. Masses of the mix. */
export interface TrichinaSlice {
  casing: Entry;
  holdTemp: Entry;
  holdHours: Entry;
  total: Entry;
  /** Salt, spice, sugar and all else that goes in dry, with the salt. */
  dryIngredients: Entry;
  salt: Entry;
}

/** A fermented or dried product. Specialist work under an approved plan. */
export interface DryingSlice {
  kind: DryingKind | null;
  /** The plan an authority or a process specialist accepted, by name or number. */
  approvedPlan: string;
  /** Weight when drying starts, and now. */
  start: Entry;
  now: Entry;
  lossTarget: Entry;
  /** Of the raw mix or the cured meat, %. */
  startSalt: Entry;
  startMoisture: Entry;
  startProtein: Entry;
  /** By a laboratory, of the finished product. */
  moisture: Entry;
  protein: Entry;
  /** Measured water activity as typed, a bare number such as 0.92: it has no unit. */
  waterActivity: string;
  /** pH as typed, a bare number. */
  ph: string;
  degreeHourRule: DegreeHourRule | null;
  steps: FermentationStep[];
  /** Whether pH 5.3 was reached by the end of the last step. */
  reachedPh53: boolean | null;
  trichina: TrichinaSlice;
}

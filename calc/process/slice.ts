import type { Entry } from '../quantities/index.ts';

export type StepKind = 'smoke' | 'cook' | 'reheat' | 'chill';

/** One step of the process, in the order of the work. Times are ISO 8601 with offset, or null until known. */
export interface ProcessStep {
  id: string;
  kind: StepKind;
  /** Water or air around the product, as planned. */
  medium: Entry;
  oven: Entry;
  startedAt: string | null;
  endedAt: string | null;
  note: string;
}

/** A reading taken out of the verdict by a person. It prints with its reason and initials. */
export interface Exclusion {
  reason: string;
  initials: string;
  at: string;
}

/** One reading of the core, as it was written down. */
export interface ProbeReading {
  id: string;
  /** When the core was read: ISO 8601 with offset. */
  at: string;
  /** What the display showed. */
  temperature: Entry;
  /** When it was typed in; null when it came with a file that does not say. */
  enteredAt: string | null;
  initials: string;
  excluded: Exclusion | null;
}

/** A probe's line from melting ice to boiling water, °C. */
export interface ProbeLine {
  readonly iceShownC: number;
  readonly boilShownC: number;
  readonly boilsAtC: number;
}

/** One probe in one mould through the whole process, cook and chill. */
export interface ProbeLog {
  id: string;
  name: string;
  mouldId: string | null;
  probeName: string;
  /** What the probe shows too much (+) or too little (-), °C difference, found by the ice check. */
  offset: Entry;
  /** How far the probe may be off either way after that, ± °C difference. Blank: unknown. */
  error: Entry;
  readings: ProbeReading[];
  /** The checked thermometer that gives offset and error in place of the two above; absent or null: none. */
  thermometerId?: string | null;
  /** What its two checks showed. Set for computing from the thermometer; a record never keeps it. */
  line?: ProbeLine;
}

export interface ProcessSlice {
  /** Cooking rule set and the one limit of it that the plan names. */
  cookRuleSetId: string | null;
  cookLimitId: string | null;
  /** Cooling rule set; null until a person chooses. */
  coolRuleSetId: string | null;
  steps: ProcessStep[];
  logs: ProbeLog[];
}

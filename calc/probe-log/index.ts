export { type CheckedLog, checkLog } from './check-log.ts';
export { type CheckedReading, type Doubt, LATE_ENTRY_MIN, type ReadingState } from './checked-reading.ts';
export { CORE_BOUNDS } from './doubts.ts';
export { hottestMediumC } from './hottest-medium.ts';
export { type LookedColumn, lookAtPaste, type PasteLook } from './paste/look.ts';
export { parseProbeLog } from './paste/parse-probe-log.ts';
export type {
  PastedLog,
  PastedReading,
  PasteIssue,
  PasteIssueCode,
  PasteOptions,
  PasteWarning,
  PasteWarningCode,
} from './paste/pasted-log.ts';
export { MAX_PASTE, MAX_READINGS, ROLLOVER_MIN } from './paste/pasted-log.ts';
export { PROJECTION, projectCrossingMs } from './project-crossing.ts';
export { worstOf } from './worst-state.ts';

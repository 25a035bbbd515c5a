export type {
  Finding,
  MissingInput,
  Params,
  Severity,
  StageId,
  StageResult,
  Verdict,
  VerdictState,
} from './finding.ts';

export type { Finding, MissingInput, Severity, StageId, Params, StageResult, Verdict, VerdictState } from './finding.ts';

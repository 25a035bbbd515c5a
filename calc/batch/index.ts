export { type AssessContext, type Assessment, assess } from './assess.ts';
export { type IssuedDifference, issueAssessment, issuedDifferences } from './issue.ts';
export { newBatch, newLine, newMould, newProbeLog, newReading, newStep } from './new-batch.ts';
export { type ReadBatch, readBatch } from './read-batch.ts';
export type * from './record.ts';
export { BATCH_SCHEMA } from './record.ts';
export { type RecordFindingId, recordStage } from './record-stage.ts';
export type { RuleSetUsed } from './rule-sets-used.ts';
export { CALC_VERSION } from './version.ts';

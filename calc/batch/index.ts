export type * from './record.ts';
export { BATCH_SCHEMA } from './record.ts';

export type * from './slice.ts';

export { instantMs, isoLike } from './instant.ts';
export { inPhase, type Phase, phasesOf } from './phases.ts';
export type * from './slice.ts';

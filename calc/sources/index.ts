import type { SOURCES } from './register/index.ts';

export { SOURCES } from './register/index.ts';
export type { Mark, Source } from './source.ts';
export type SourceId = keyof typeof SOURCES;

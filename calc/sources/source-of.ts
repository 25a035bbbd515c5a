import { SOURCES } from './register/index.ts';
import type { Source } from './source.ts';

/** Every id of the register. */
export type SourceId = keyof typeof SOURCES;

/** The source behind an id. */
export function sourceOf(id: SourceId): Source {
  return SOURCES[id];
}

/** Whether a text is the id of a source, for ids that come from data. */
export function isSourceId(id: string): id is SourceId {
  return Object.hasOwn(SOURCES, id);
}

import type { Source } from '../source.ts';

export const mouldSources = {} as const satisfies Record<string, Source>;

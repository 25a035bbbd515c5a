import type { Source } from '../source.ts';

export const cureSources = {} as const satisfies Record<string, Source>;

import type { Source } from '../source.ts';

export const lethalitySources = {} as const satisfies Record<string, Source>;

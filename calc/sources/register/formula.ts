import type { Source } from '../source.ts';

export const formulaSources = {} as const satisfies Record<string, Source>;

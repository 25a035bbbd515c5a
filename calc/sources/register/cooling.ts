import type { Source } from '../source.ts';

export const coolingSources = {} as const satisfies Record<string, Source>;

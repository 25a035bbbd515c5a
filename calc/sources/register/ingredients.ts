import type { Source } from '../source.ts';

export const ingredientsSources = {} as const satisfies Record<string, Source>;

import type { HitData } from './index-types.ts';
import type { Kind } from './kinds.ts';

/** What the page asks of the search worker. Every question has a number, which its answer bears too. */
export type Question =
  | { readonly id: number; readonly ask: 'open' }
  | { readonly id: number; readonly ask: 'look'; readonly typed: string; readonly kind: Kind | null }
  | { readonly id: number; readonly ask: 'data'; readonly hits: readonly string[] };

/** What a query found: the ids of its results in their order. */
export interface Found {
  readonly hits: readonly string[];
  readonly counts: Readonly<Record<Kind, number>>;
  /** The query that was answered instead, where the one typed found nothing. */
  readonly instead: string | null;
}

export interface Answers {
  readonly open: true;
  readonly look: Found;
  readonly data: readonly HitData[];
}

export type Reply =
  | { readonly id: number; readonly answer: Answers[keyof Answers] }
  | { readonly id: number; readonly failed: true };

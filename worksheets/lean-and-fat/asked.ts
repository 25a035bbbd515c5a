import type { BlendSlice, LeastCost } from '@larderwright/calc/blend';
import type { Finding, Verdict } from '@larderwright/calc/findings';
import { atom } from 'nanostores';
import type { StandardOnPaper } from './card-model.ts';

/** A least-cost blend that was asked for, with the question. It answers that question and no other. */
export interface Asked {
  readonly slice: BlendSlice;
  readonly answer: LeastCost;
  readonly findings: readonly Finding[];
  /** The blend found judged by the standard of its name. */
  readonly verdicts: readonly Verdict[];
  readonly paper: StandardOnPaper;
}

export type AskState =
  | { readonly state: 'not-asked' | 'asking' }
  | { readonly state: 'failed'; readonly detail: string }
  | ({ readonly state: 'answered' } & Asked);

/** The last question of this visit. It is never stored: asked again it gives the same answer. */
export const $asked = atom<AskState>({ state: 'not-asked' });

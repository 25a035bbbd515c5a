import type { VerdictState } from '../findings/index.ts';

const ORDER: readonly VerdictState[] = ['fail', 'cannot-tell', 'pass'];

/**
 * The one of several results that rules: the first fail, else the first "cannot tell", else the first.
 * Undefined only for an empty list.
 */
export function worstOf<T extends { readonly state: VerdictState }>(results: readonly T[]): T | undefined {
  return ORDER.map((state) => results.find((result) => result.state === state)).find(Boolean);
}

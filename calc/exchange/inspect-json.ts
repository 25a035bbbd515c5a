/** Deepest nesting a record of ours could reach, with room. */
const MOST_DEEP = 40;
/** Keys that reach into the machinery of objects. No record of ours has one. */
const FORBIDDEN = new Set(['__proto__', 'constructor', 'prototype']);

export type JsonFault = { readonly problem: 'too-deep' | 'forbidden-key'; readonly path: string };

/**
 * Looks through parsed JSON from elsewhere for what no record of ours holds, before anything reads it.
 *
 * @returns the first fault with its place, or null
 */
export function inspectJson(value: unknown): JsonFault | null {
  const waiting: { value: unknown; path: string; depth: number }[] = [{ value, path: '', depth: 0 }];
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const { value: here, path, depth } = next;
    if (typeof here !== 'object' || here === null) continue;
    if (depth > MOST_DEEP) return { problem: 'too-deep', path };
    for (const [key, below] of Object.entries(here)) {
      const place = path === '' ? key : `${path}.${key}`;
      if (FORBIDDEN.has(key)) return { problem: 'forbidden-key', path: place };
      if (typeof below === 'object') waiting.push({ value: below, path: place, depth: depth + 1 });
    }
  }
  return null;
}

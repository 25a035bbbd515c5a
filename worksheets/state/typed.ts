/**
 * The most characters kept of one field, far below what the record may hold (calc/batch): a slip of the
 * clipboard must not make the whole batch unreadable.
 */
export const LONGEST_LINE = 2_000;
export const LONGEST_NOTE = 20_000;

/** What of a typed text is kept. */
export function keptText(typed: string, longest: number): string {
  if (typed.length <= longest) return typed;
  // Half a surrogate pair at the cut is no character.
  return /[\uD800-\uDBFF]/.test(typed.charAt(longest - 1))
    ? typed.slice(0, longest - 1)
    : typed.slice(0, longest);
}

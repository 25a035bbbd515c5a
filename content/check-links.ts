/** One name that leads nowhere: problem, place, found, wanted, hint. */
export interface Dangling {
  readonly place: string;
  readonly kind: string;
  readonly found: string;
  readonly wanted: string;
}

/** What of an entry the check reads: its own id and the names it uses, by kind. */
export interface Names {
  readonly place: string;
  readonly uses: Readonly<Record<string, readonly string[]>>;
}

/** Every id that exists, by kind. */
export type Known = Readonly<Record<string, ReadonlySet<string>>>;

/**
 * Finds every name used that no entry answers to.
 * @param entries the entries with the names they use
 * @param known ids that exist, by the same kinds
 * @returns the dangling names, in the order met; empty when all is well
 */
export function findDangling(entries: readonly Names[], known: Known): Dangling[] {
  return entries.flatMap(({ place, uses }) =>
    Object.entries(uses).flatMap(([kind, ids]) =>
      ids
        .filter((id) => !known[kind]?.has(id))
        .map((id) => ({ place, kind, found: id, wanted: nearest(id, known[kind] ?? new Set()) })),
    ),
  );
}

/** Says what to do about dangling names, one a line. */
export function describeDangling(dangling: readonly Dangling[]): string {
  return dangling
    .map(
      (d) =>
        `${d.place}: names ${d.kind} "${d.found}", and there is none.${d.wanted && ` Did you mean "${d.wanted}"?`}`,
    )
    .join('\n');
}

/** The known id that shares most letters pairs with the one written, or '' when none comes close. */
function nearest(id: string, known: ReadonlySet<string>): string {
  const pairs = (word: string) =>
    new Set(Array.from({ length: word.length - 1 }, (_, i) => word.slice(i, i + 2)));
  const mine = pairs(id);
  const scored = [...known]
    .map((other) => ({
      other,
      shared: [...pairs(other)].filter((pair) => mine.has(pair)).length / mine.size,
    }))
    .sort((a, b) => b.shared - a.shared);
  const best = scored[0];
  return best && best.shared > 0.5 ? best.other : '';
}

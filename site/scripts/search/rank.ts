/** How near to the best score of all a caution must come to stand first. */
const NEAR_BEST = 0.3;
/** So many cautions stand first at most: the rest keep their place. */
const CAUTIONS_FIRST = 2;
/** A synonym counts a little less than the word that was typed. */
const SYNONYM_SHARE = 0.9;
/** Of the first results so many may be single rows of tables. */
const ROWS_AMONG = 2;
const FIRST_RESULTS = 8;

interface Scored {
  readonly id: string;
  readonly score: number;
}

/**
 * Puts cautions that answer the query before everything else, stops before the others; the rest keep their order.
 * @param hits all results, best first
 * @param cautionIds ids of those that are cautions
 * @param stopIds ids of those that are cautions of the gravest level
 */
export function cautionsFirst<Hit extends Scored>(
  hits: readonly Hit[],
  cautionIds: ReadonlySet<string>,
  stopIds: ReadonlySet<string>,
): Hit[] {
  const best = hits[0]?.score ?? 0;
  const leading = hits
    .filter((hit) => cautionIds.has(hit.id) && hit.score >= best * NEAR_BEST)
    .sort((a, b) => Number(stopIds.has(b.id)) - Number(stopIds.has(a.id)) || b.score - a.score)
    .slice(0, CAUTIONS_FIRST);
  return [...leading, ...hits.filter((hit) => !leading.includes(hit))];
}

/**
 * One list of the results for several ways of saying a query, best first. What two ways find is kept once, at its best.
 * @param lists results of the query as typed, then of its synonyms
 */
export function mergeHits<Hit extends Scored>(lists: readonly (readonly Hit[])[]): Hit[] {
  const best = new Map<string, Hit>();
  for (const [at, hits] of lists.entries())
    for (const hit of hits) {
      const score = at === 0 ? hit.score : hit.score * SYNONYM_SHARE;
      if (score > (best.get(hit.id)?.score ?? -1)) best.set(hit.id, { ...hit, score });
    }
  return [...best.values()].sort((a, b) => b.score - a.score);
}

/**
 * Lets few rows of tables into the first results, so that pages are seen; the other rows follow after these.
 * @param rowIds ids of single rows
 */
export function rowsApart<Hit extends Scored>(hits: readonly Hit[], rowIds: ReadonlySet<string>): Hit[] {
  const first: Hit[] = [];
  const later: Hit[] = [];
  let rows = 0;
  for (const hit of hits) {
    const isRow = rowIds.has(hit.id);
    if (isRow && rows >= ROWS_AMONG && first.length < FIRST_RESULTS) later.push(hit);
    else {
      if (isRow) rows++;
      first.push(hit);
    }
  }
  return [...first.slice(0, FIRST_RESULTS), ...byScore([...first.slice(FIRST_RESULTS), ...later])];
}

function byScore<Hit extends Scored>(hits: readonly Hit[]): Hit[] {
  return [...hits].sort((a, b) => b.score - a.score);
}

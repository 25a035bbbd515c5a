/** How near to the best score of all a caution must come to stand first. */
const NEAR_BEST = 0.2;
/** So many cautions stand first at most: the rest keep their place. */
const CAUTIONS_FIRST = 2;

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

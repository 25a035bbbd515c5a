/** Maps a value to a place on the drawing. */
export type Scale = (value: number) => number;

/**
 * A straight-line scale. A domain without extent is given one, so that a single reading can be drawn.
 *
 * @param domain first and last value
 * @param range where they are drawn, px
 */
export function linearScale(domain: readonly [number, number], range: readonly [number, number]): Scale {
  const [d0, d1] = domain;
  const [r0, r1] = range;
  const span = d1 - d0 || 1;
  return (value) => r0 + ((value - d0) / span) * (r1 - r0);
}

/** Smallest and largest finite value, or null when there is none. Safe for very long lists. */
export function extentOf(values: Iterable<number>): [number, number] | null {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    if (!Number.isFinite(value)) continue;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return low <= high ? [low, high] : null;
}

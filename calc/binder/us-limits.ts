import type { Verdict } from '../findings/index.ts';
import { compensatedSum, entryValue } from '../quantities/index.ts';
import type { BinderFindingId } from './finding-ids.ts';
import type { Extender } from './slice.ts';
import type { ExtenderShare } from './values.ts';

/**
 * Most binders and extenders of a sausage sold by name in the United States: 3.5 % alone or together, and isolated soy
 * protein and sodium caseinate 2 % each. The rule's own row names no base; it is used on the finished product.
 * Source: `us-9-cfr-424-21-c`, 2015 annual edition.
 */
export const US_BINDER_LIMITS: Readonly<Record<ExtenderShare['kind'], number | null>> = {
  all: 0.035,
  'cereal-starch-milk': null,
  'isolated-soy': 0.02,
  caseinate: 0.02,
};

const NOISE = 1e-12;

/** Masses of extenders by kind and together. A null mass is unknown: some extender has no weight. */
export function extenderShares(extenders: readonly Extender[], baseG: number | null): ExtenderShare[] {
  const kinds = ['all', 'isolated-soy', 'caseinate'] as const;
  return kinds.map((kind) => {
    const masses = extenders
      .filter((extender) => kind === 'all' || extender.kind === kind)
      .map(({ amount }) => entryValue('mass', amount));
    const known = masses.filter((mass) => mass !== null);
    const massG = known.length === masses.length ? compensatedSum(known) : null;
    return { kind, massG, shareFraction: massG === null || !baseG ? null : massG / baseG };
  });
}

/**
 * Judges the shares. Without the finished weight the raw mix is the base, which flatters: over it is over, within it is
 * not known, since the product will be lighter.
 *
 * @param finished whether the base is the finished product
 */
export function judgeExtenders(
  shares: readonly ExtenderShare[],
  finished: boolean,
): Verdict<BinderFindingId>[] {
  return shares.flatMap(({ kind, massG, shareFraction }) => {
    const limit = US_BINDER_LIMITS[kind];
    if (limit === null) return [];
    const over = shareFraction !== null && shareFraction > limit + NOISE;
    const within = shareFraction !== null && (finished || massG === 0);
    const state = over ? 'fail' : within ? 'pass' : 'cannot-tell';
    const reason: BinderFindingId = over
      ? 'binder.over-limit'
      : within
        ? 'binder.within-limit'
        : 'binder.cannot-tell';
    return [
      {
        id: `binder.us.${kind}`,
        stage: 'binder',
        state,
        reason,
        params: {
          kind,
          limitFraction: limit,
          ...(shareFraction === null ? {} : { shareFraction }),
          finished: finished ? 1 : 0,
        },
        basis: 'us-9-cfr-424-21-c',
        mark: 'confirmed',
      },
    ];
  });
}

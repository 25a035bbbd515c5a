import type { MissingInput, Verdict } from '../findings/index.ts';
import { type NamedStandard, namedStandardOf, type StandardLimit } from '../formula/index.ts';
import { readEntry } from '../quantities/index.ts';
import type { ReadBand } from './band.ts';
import type { BlendFindingId } from './finding-ids.ts';
import type { Makeup } from './makeup.ts';
import { newBlendStandard } from './new-blend.ts';
import type { BlendSlice } from './slice.ts';

/** The noise of decimal shares. */
const NOISE = 1e-9;
/** Finished over ingoing. A blend that gained a third was misread. */
const YIELD_RANGE = { min: 0.4, max: 1.3 };

/** The standard of the name it is sold under, as bounds of the least-cost blend. */
export interface ReadStandard {
  readonly bands: readonly ReadBand[];
  readonly missing: readonly MissingInput[];
}

/** Finished weight over what went in: 1 for what is sold raw, null while it is not known. */
function yieldOf(slice: BlendSlice, standard: NamedStandard): number | null {
  if (!standard.cooked) return 1;
  const typed = readEntry('fraction', (slice.standard ?? newBlendStandard()).yield, { range: YIELD_RANGE });
  return typed.state === 'ok' ? typed.value : null;
}

/**
 * A limit of the finished product as one of the raw blend, where all that is lost is water: fat ≤ L × yield; added
 * water, alone or with fat, ≤ L × yield + loss. Derived: mass balance. Protein on a fat-free basis is judged, not bound.
 */
function bandOf({ quality, side, fraction, of }: StandardLimit, yieldFraction: number): ReadBand | null {
  if (quality === 'pff') return null;
  const lost = quality === 'fat' || quality === 'liver' || quality === 'ice' ? 0 : 1 - yieldFraction;
  const limit = of === 'ingredients' ? fraction : fraction * yieldFraction + lost;
  return side === 'most' ? { quality, min: null, max: limit } : { quality, min: limit, max: null };
}

/** The bounds of the name chosen. Without the yield of what is sold cooked nothing is bound: it is missing. */
export function readStandard(slice: BlendSlice): ReadStandard {
  const standard = namedStandardOf(slice.standard?.nameId ?? null);
  if (!standard || !slice.standard?.asBounds) return { bands: [], missing: [] };
  const yieldFraction = yieldOf(slice, standard);
  const needsYield = standard.limits.some(({ of, quality }) => of === 'finished' && quality !== 'pff');
  if (yieldFraction === null && needsYield)
    return { bands: [], missing: [{ field: 'blend.standard.yield', neededFor: 'blend.least-cost' }] };
  return { bands: standard.limits.flatMap((limit) => bandOf(limit, yieldFraction ?? 1) ?? []), missing: [] };
}

/** Where a blend stands at a limit, as the limit is told. */
function figureOf({ quality, of }: StandardLimit, makeup: Makeup, yieldFraction: number): number | null {
  const lost = 1 - yieldFraction;
  switch (quality) {
    case 'liver':
    case 'ice':
      return makeup[quality];
    case 'fat':
      return makeup.fat === null ? null : of === 'finished' ? makeup.fat / yieldFraction : makeup.fat;
    case 'added-water': {
      const added = makeup['added-water'];
      return added === null ? null : Math.max(0, (added - lost) / yieldFraction);
    }
    case 'fat-and-added-water': {
      const { fat } = makeup;
      const added = makeup['added-water'];
      return fat === null || added === null ? null : (fat + Math.max(0, added - lost)) / yieldFraction;
    }
    case 'pff': {
      const { protein, fat } = makeup;
      const rest = fat === null ? null : yieldFraction - fat;
      return protein === null || rest === null || rest <= 0 ? null : protein / rest;
    }
  }
}

const isWaterLimit = ({ quality }: StandardLimit) =>
  quality === 'ice' || quality === 'added-water' || quality === 'fat-and-added-water';

/**
 * Whether a blend keeps to the standard of the name it is sold under. Without the yield only too much
 * fat is certain, which a cook can but gather. A blend with no water or ice in it tells nothing of water added later.
 */
export function judgeStandard(slice: BlendSlice, makeup: Makeup | null): Verdict<BlendFindingId>[] {
  const standard = namedStandardOf(slice.standard?.nameId ?? null);
  if (!standard) return [];
  const yieldFraction = yieldOf(slice, standard);
  return standard.limits.map((limit) => {
    const { quality, side, fraction, of, section } = limit;
    const figure = makeup === null ? null : figureOf(limit, makeup, yieldFraction ?? 1);
    const sure = of === 'ingredients' || yieldFraction !== null;
    const noWater = isWaterLimit(limit) && !makeup?.ice;
    const broken =
      figure !== null && (side === 'most' ? figure > fraction + NOISE : figure < fraction - NOISE);
    // Water lost takes added water along and gathers fat and protein: raw, only too much fat is too much for certain.
    const fails = broken && (sure || quality === 'fat');
    const state = fails ? 'fail' : figure === null || !sure || noWater ? 'cannot-tell' : 'pass';
    const reason = fails
      ? 'blend.standard-broken'
      : state === 'pass'
        ? 'blend.standard-kept'
        : 'blend.standard-unknown';
    return {
      id: `blend.standard.${quality}`,
      stage: 'blend',
      state,
      reason,
      params: {
        name: standard.name,
        quality,
        side,
        limitFraction: fraction,
        of,
        section,
        ...(figure === null ? {} : { figureFraction: figure }),
        why: figure === null ? 'make-up' : sure ? 'water' : 'yield',
      },
      basis: standard.source,
      mark: standard.mark,
    };
  });
}

import { type CookLimit, type CookRuleSet, type FatColumn, type Hold, isByFat, thresholdC } from './limit.ts';

/** What the product is, as far as the choice of a limit depends on it. Null is unknown, never "no". */
export interface CookFacts {
  /** Any bird in any line: muscle, liver, fat or skin. Egg is not poultry. */
  readonly hasPoultry: boolean | null;
  /** Which birds; unknown takes the longer of both tables. */
  readonly poultryKind: 'turkey' | 'other' | 'both' | null;
  /** Fat of the product as cooked, mass fraction. */
  readonly fatFraction: number | null;
  /** Minced, chopped or emulsified, or stuffed with such. */
  readonly comminuted: boolean | null;
  /** Brine or seasoning driven into whole meat; left out is unknown. Injected meat is read like minced meat. */
  readonly injected?: boolean | null;
  /** Liver of pig or wild boar. */
  readonly hasPorkLiver: boolean | null;
}

/** Nothing known. */
export const UNKNOWN_FACTS: CookFacts = {
  hasPoultry: null,
  poultryKind: null,
  fatFraction: null,
  comminuted: null,
  hasPorkLiver: null,
};

/** Why a limit may not judge this product. */
export type LimitRefusal =
  | 'cook.limit-not-for-poultry'
  | 'cook.limit-for-poultry-only'
  | 'cook.limit-not-for-minced'
  | 'cook.species-unknown'
  | 'cook.form-unknown'
  | 'cook.fat-unknown'
  | 'cook.fat-off-table';

export type ResolvedLimit =
  | { readonly ok: true; readonly limit: CookLimit; readonly hold: Hold }
  | { readonly ok: false; readonly state: 'fail' | 'cannot-tell'; readonly reason: LimitRefusal };

/** The poultry tables end at this much fat. */
export const TOP_FAT_PERCENT = 12;
/** Room for the last digit of a sum, far under any figure a person can mean. */
const FAT_EPSILON = 1e-9;

function refuse(state: 'fail' | 'cannot-tell', reason: LimitRefusal): ResolvedLimit {
  return { ok: false, state, reason };
}

/** The column a fat content is read in: the next one that is not leaner. No interpolation. */
function columnFor(columns: readonly FatColumn[], fatPercent: number): FatColumn | undefined {
  return columns.find((column) => column.maxFatPercent >= fatPercent - FAT_EPSILON);
}

/**
 * The hold a limit asks of this product, or why it may not be used. A limit for meat without poultry fails as soon
 * as one line is a bird; a poultry row is read in the column of the next higher fat, and not at all above 12 %.
 */
export function resolveLimit(limit: CookLimit, facts: CookFacts): ResolvedLimit {
  if (limit.serves === 'no-poultry') {
    if (facts.hasPoultry === true) return refuse('fail', 'cook.limit-not-for-poultry');
    if (facts.hasPoultry === null) return refuse('cannot-tell', 'cook.species-unknown');
  }
  if (limit.serves === 'poultry') {
    if (facts.hasPoultry === false) return refuse('cannot-tell', 'cook.limit-for-poultry-only');
    if (facts.hasPoultry === null) return refuse('cannot-tell', 'cook.species-unknown');
  }
  if (limit.form === 'intact' || limit.form === 'whole-roast') {
    if (facts.comminuted === true) return refuse('fail', 'cook.limit-not-for-minced');
    if (facts.comminuted === null) return refuse('cannot-tell', 'cook.form-unknown');
    if (limit.form === 'intact' && facts.injected !== false)
      return facts.injected
        ? refuse('fail', 'cook.limit-not-for-minced')
        : refuse('cannot-tell', 'cook.form-unknown');
  }
  if (!isByFat(limit.hold)) return { ok: true, limit, hold: limit.hold };
  if (facts.fatFraction === null || !(facts.fatFraction >= 0))
    return refuse('cannot-tell', 'cook.fat-unknown');
  const fatPercent = facts.fatFraction * 100;
  const birds = facts.poultryKind ?? 'both';
  const asked = [
    birds === 'other' ? [] : [columnFor(limit.hold.turkey, fatPercent)],
    birds === 'turkey' ? [] : [columnFor(limit.hold.otherBirds, fatPercent)],
  ].flat();
  const known = asked.filter((column) => column !== undefined);
  const [first = null] = known.toSorted((a, b) => b.s - a.s);
  if (first === null || known.length < asked.length) return refuse('cannot-tell', 'cook.fat-off-table');
  return { ok: true, limit, hold: { s: first.s, printed: first.printed } };
}

/** The limits of a set that may judge this product, each with its hold. */
export function applicableLimits(set: CookRuleSet, facts: CookFacts): Extract<ResolvedLimit, { ok: true }>[] {
  return set.limits.map((limit) => resolveLimit(limit, facts)).filter((resolved) => resolved.ok);
}

/**
 * The hold a table asks at a measured temperature: the shortest of the rows at or below it, never a row above and
 * nothing in between. (The shortest, for a hotter row may ask more only where its own column could not be read.)
 * @returns null below the lowest row, or where no row serves the product
 */
export function lookUpHold(
  set: CookRuleSet,
  measuredC: number,
  facts: CookFacts,
): Extract<ResolvedLimit, { ok: true }> | null {
  const below = applicableLimits(set, facts).filter(
    ({ limit }) => thresholdC(limit.stated, 'C') <= measuredC,
  );
  const byHold = below.toSorted(
    (a, b) => a.hold.s - b.hold.s || thresholdC(b.limit.stated, 'C') - thresholdC(a.limit.stated, 'C'),
  );
  return byHold.at(0) ?? null;
}

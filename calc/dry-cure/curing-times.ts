import { convert } from '../quantities/index.ts';
import type { Mark, SourceId } from '../sources/index.ts';

/** A published or habitual rule for how long a piece cures. Planning only. */
export interface CuringTimeRule {
  readonly id: string;
  /** What the days are counted by. */
  readonly by: 'thickness' | 'mass';
  readonly route: 'dry' | 'immersion';
  /** Days for a piece: `add` + `per` × thickness in mm, or × mass in lb. */
  readonly perUnit: number;
  readonly add: number;
  readonly atLeastDays: number;
  /** Thickness it is meant for, mm; null where none is stated. */
  readonly rangeMm: readonly [number, number] | null;
  readonly source: SourceId;
  readonly mark: Mark;
}

const bySource = (source: SourceId, mark: Mark) => ({ source, mark, rangeMm: null, add: 0, atLeastDays: 0 });

/** Every rule carried. Sources disagree by a factor of two; none replaces a salt analysis. */
export const CURING_TIME_RULES = [
  {
    ...bySource('trade-curing-habits', 'common-practice'),
    id: 'six-mm-a-day',
    by: 'thickness',
    route: 'dry',
    perUnit: 1 / 6,
    add: 2,
    rangeMm: [25, 60],
  },
  {
    ...bySource('us-extension-days-per-inch', 'memory'),
    id: 'seven-days-an-inch',
    by: 'thickness',
    route: 'dry',
    perUnit: 7 / 25.4,
  },
  {
    ...bySource('purdue-curing-1919', 'confirmed'),
    id: 'dry-two-days-a-pound',
    by: 'mass',
    route: 'dry',
    perUnit: 2,
  },
  {
    ...bySource('us-9-cfr-318-10-curing', 'confirmed'),
    id: 'ham-contact',
    by: 'mass',
    route: 'dry',
    perUnit: 1.5,
    atLeastDays: 28,
  },
  {
    ...bySource('us-9-cfr-318-10-curing', 'confirmed'),
    id: 'ham-contact-and-equalise',
    by: 'mass',
    route: 'dry',
    perUnit: 2,
    atLeastDays: 40,
  },
  {
    ...bySource('usda-farm-pork', 'confirmed'),
    id: 'sweet-pickle-short',
    by: 'mass',
    route: 'immersion',
    perUnit: 3.5,
  },
  {
    ...bySource('usda-farm-pork', 'confirmed'),
    id: 'sweet-pickle',
    by: 'mass',
    route: 'immersion',
    perUnit: 4,
  },
] as const satisfies readonly CuringTimeRule[];

export type CuringTimeRuleId = (typeof CURING_TIME_RULES)[number]['id'];

/**
 * Days a rule gives, before rounding.
 *
 * @param size thickness in mm, or mass in g, as the rule counts
 * @returns null when the size is not a number above 0
 * @example curingDays('ham-contact', 24 * 453.59237) // 36
 */
export function curingDays(id: CuringTimeRuleId, size: number): number | null {
  const rule = CURING_TIME_RULES.find((one) => one.id === id);
  if (rule === undefined || !Number.isFinite(size) || size <= 0) return null;
  const units = rule.by === 'mass' ? convert(size, 'g', 'lb') : size;
  return Math.max(rule.atLeastDays, rule.add + rule.perUnit * units);
}

/** Fixed least times of 9 CFR 319.106, days: in cure with equalising, and in all. */
export const COUNTRY_HAM_DAYS = {
  ham: { cureAndEqualise: 45, total: 70 },
  shoulder: { cureAndEqualise: 25, total: 50 },
  source: 'us-9-cfr-319-106' satisfies SourceId,
  mark: 'confirmed' satisfies Mark,
} as const;

/** Thin sides in dry cure, days, of the extension text of 1919; soaking after the cure, minutes a day in cure, of the farm text. */
export const OTHER_CURING_HABITS = {
  thinSidesDays: [12, 14],
  thinSidesSource: 'purdue-curing-1919' satisfies SourceId,
  soakMinutesPerDay: 2,
  soakSource: 'usda-farm-pork' satisfies SourceId,
  mark: 'confirmed' satisfies Mark,
} as const;

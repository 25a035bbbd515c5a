import { convert } from '../quantities/index.ts';
import type { Mark, SourceId } from '../sources/index.ts';
import type { DegreeHourRule } from './slice.ts';

/** Limit up to a highest chamber temperature of the fermentation. */
interface Band {
  /** The band ends here, in the rule's own degrees; null: no end. */
  readonly to: number | null;
  /** Whether the end itself still belongs to it. */
  readonly toIncluded: boolean;
  readonly limit: number;
}

/** Degree-hours above a threshold until pH 5.3, so that Staphylococcus has no time to make its toxin. */
export interface DegreeHourTable {
  readonly id: DegreeHourRule;
  readonly unit: 'F' | 'C';
  readonly threshold: number;
  readonly bands: readonly Band[];
  readonly source: SourceId;
  readonly mark: Mark;
}

/** Both tables. The three limits of each are from memory; the hours that follow from the first were read. */
export const DEGREE_HOUR_TABLES: readonly DegreeHourTable[] = [
  {
    id: 'us-fahrenheit',
    unit: 'F',
    threshold: 60,
    bands: [
      { to: 90, toIncluded: false, limit: 1200 },
      { to: 100, toIncluded: true, limit: 1000 },
      { to: null, toIncluded: true, limit: 900 },
    ],
    source: 'ami-fermented-gmp',
    mark: 'memory',
  },
  {
    id: 'canada-celsius',
    unit: 'C',
    threshold: 15.6,
    bands: [
      { to: 33, toIncluded: false, limit: 665 },
      { to: 37, toIncluded: true, limit: 555 },
      { to: null, toIncluded: true, limit: 500 },
    ],
    source: 'cfia-degree-hours',
    mark: 'memory',
  },
];

/** A stretch at one chamber temperature. */
export interface FermentationStretch {
  readonly tempC: number;
  readonly hours: number;
}

/** What a fermentation came to. */
export interface DegreeHours {
  readonly total: number;
  readonly limit: number;
  readonly highest: number;
  readonly isWithin: boolean;
}

/** The table of a rule. */
export function degreeHourTable(rule: DegreeHourRule): DegreeHourTable {
  const table = DEGREE_HOUR_TABLES.find(({ id }) => id === rule);
  if (table === undefined) throw new RangeError(`no degree-hours for ${rule}`);
  return table;
}

/** Limit at a highest temperature, in the rule's own degrees. It is the highest that sets the band, not the mean. */
export function degreeHourLimit(table: DegreeHourTable, highest: number): number {
  const band = table.bands.find(
    ({ to, toIncluded }) => to === null || highest < to || (toIncluded && highest === to),
  );
  return band?.limit ?? 0;
}

/**
 * Degree-hours above the threshold from the chamber's temperatures, against the limit of the highest.
 * A stretch below the threshold counts nothing and takes nothing off.
 *
 * @returns null without a stretch, or with one that is not a number or runs backward
 * @example degreeHours('us-fahrenheit', [{ tempC: 26.666…, hours: 55 }]) // 1100 of 1200
 */
export function degreeHours(
  rule: DegreeHourRule,
  stretches: readonly FermentationStretch[],
): DegreeHours | null {
  const table = degreeHourTable(rule);
  const isUsable = stretches.every(
    ({ tempC, hours }) => Number.isFinite(tempC) && Number.isFinite(hours) && hours >= 0,
  );
  if (stretches.length === 0 || !isUsable) return null;
  const own = stretches.map(({ tempC, hours }) => ({ degrees: convert(tempC, 'C', table.unit), hours }));
  const total = own.reduce(
    (sum, { degrees, hours }) => sum + Math.max(0, degrees - table.threshold) * hours,
    0,
  );
  const highest = Math.max(...own.map(({ degrees }) => degrees));
  const limit = degreeHourLimit(table, highest);
  return { total, limit, highest, isWithin: total <= limit * (1 + 1e-9) };
}

/**
 * Longest time to pH 5.3 at one temperature, whole hours, cut down and never rounded up.
 *
 * @returns null at or below the threshold, where the rule sets no time
 * @example longestHours('us-fahrenheit', 90) // 33
 */
export function longestHours(rule: DegreeHourRule, degrees: number): number | null {
  const table = degreeHourTable(rule);
  if (!Number.isFinite(degrees) || degrees <= table.threshold) return null;
  return Math.floor((degreeHourLimit(table, degrees) / (degrees - table.threshold)) * (1 + 1e-12));
}

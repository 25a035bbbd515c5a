import { cardinalRatePerH } from './cardinal-temperature.ts';
import { grow } from './grow.ts';
import { type GrowthDoubt, type GrowthFacts, productDoubt } from './in-cooling.ts';
import {
  LISTERIA_GROUPS,
  type ListeriaGroup,
  PERFRINGENS_COUNTS,
  PERFRINGENS_LAG_WORK,
  PERFRINGENS_SETS,
} from './published.ts';
import { REFRIGERATOR_RANGE, refrigeratorLogsPerDay } from './square-root.ts';

/** A time spent at one temperature. */
export interface Stay {
  readonly tempC: number | null;
  readonly timeMin: number | null;
}

/** Growth of Listeria monocytogenes that got on after the cook. The published rate has no lag. */
export interface ListeriaGrowth {
  readonly doubt: 'no-group' | 'no-stay' | 'outside-range' | null;
  readonly log10: number | null;
  /** Days at the warmest stay for two tenfolds, 1 to 100 cells a gram. */
  readonly daysToHundredfold: number | null;
  readonly warmestC: number | null;
}

const MIN_PER_DAY = 1440;
const MIN_PER_H = 60;
/** 1 to 100 cells per gram. */
const HUNDREDFOLD_LOGS = 2;

function listeriaGroup(id: string | null): ListeriaGroup | undefined {
  return LISTERIA_GROUPS.find((group) => group.id === id);
}

export const isKnown = (stay: Stay): stay is { tempC: number; timeMin: number } =>
  stay.tempC !== null && stay.timeMin !== null && stay.timeMin >= 0;

/** Days in which a number of cells grows a hundredfold at a steady temperature; null outside 0–12 °C. */
export function daysToHundredfold(tempC: number, at5CLogsPerDay: number): number | null {
  const perDay = refrigeratorLogsPerDay(tempC, at5CLogsPerDay);
  return perDay === null || !(perDay > 0) ? null : HUNDREDFOLD_LOGS / perDay;
}

/**
 * Growth of Listeria over stays in the cold, each at its own temperature: averaging them first would come out too
 * small. Without lag. One stay outside 0–12 °C, or a blank one, and nothing is told.
 */
export function listeriaGrowth(groupId: string | null, stays: readonly Stay[]): ListeriaGrowth {
  const group = listeriaGroup(groupId);
  const nothing = { log10: null, daysToHundredfold: null, warmestC: null };
  if (!group) return { doubt: 'no-group', ...nothing };
  const known = stays.filter(isKnown);
  if (known.length === 0 || known.length < stays.length) return { doubt: 'no-stay', ...nothing };
  const grown = known.map(({ tempC, timeMin }) => {
    const perDay = refrigeratorLogsPerDay(tempC, group.at5CLogsPerDay);
    return perDay === null ? null : (perDay * timeMin) / MIN_PER_DAY;
  });
  if (grown.includes(null)) return { doubt: 'outside-range', ...nothing };
  const warmestC = Math.max(...known.map(({ tempC }) => tempC));
  return {
    doubt: null,
    log10: grown.reduce((sum: number, logs) => sum + (logs ?? 0), 0),
    daysToHundredfold: daysToHundredfold(warmestC, group.at5CLogsPerDay),
    warmestC,
  };
}

/** Growth of Clostridium perfringens over stays, log10. */
export interface PerfringensStays {
  readonly doubt: GrowthDoubt | 'no-stay' | null;
  readonly withoutLag: number | null;
  readonly withLag: number | null;
}

/** What the same stays let Clostridium perfringens grow, by the faster of the published sets, with and without lag. */
export function perfringensInStorage(facts: GrowthFacts, stays: readonly Stay[]): PerfringensStays {
  const nothing = { withoutLag: null, withLag: null };
  const product = productDoubt(facts);
  if (product !== null) return { doubt: product, ...nothing };
  const known = stays.filter(isKnown);
  if (known.length === 0 || known.length < stays.length) return { doubt: 'no-stay', ...nothing };
  const integral = Math.max(
    ...PERFRINGENS_SETS.map((set) =>
      known.reduce(
        (sum, { tempC, timeMin }) => sum + (cardinalRatePerH(tempC, set) * timeMin) / MIN_PER_H,
        0,
      ),
    ),
  );
  const { start, most } = PERFRINGENS_COUNTS;
  const after = (work: number) => grow({ log10Count: start, work }, integral, most).log10Count - start;
  return { doubt: null, withoutLag: after(0), withLag: after(PERFRINGENS_LAG_WORK) };
}

/** Range of the refrigerator rate in words' order, for a sentence. */
export const LISTERIA_RANGE_C: readonly [number, number] = [REFRIGERATOR_RANGE.minC, REFRIGERATOR_RANGE.maxC];

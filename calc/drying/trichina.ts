import type { Mark, SourceId } from '../sources/index.ts';

export const TRICHINA_SOURCE = 'us-9-cfr-318-10-curing' satisfies SourceId;
export const TRICHINA_MARK = 'confirmed' satisfies Mark;

/** Table 3A: least days in the drying room by casing diameter, in. */
export const TRICHINA_3A: readonly (readonly [casingIn: number, days: number])[] = [
  [1, 14],
  [1.5, 15],
  [2, 16],
  [2.5, 18],
  [3, 20],
  [3.5, 23],
  [4, 25],
  [4.5, 30],
  [5, 35],
  [5.5, 43],
  [6, 50],
];

/** Table 3B: per cent off the days, by hours held before drying and by temperature of the hold, °F. */
export const TRICHINA_3B = {
  tempsF: [70, 75, 80, 85, 90, 95, 100, 105, 110, 120],
  rows: [
    { hours: 24, percent: [4, 5, 8, 10, 15, 23, 37, 57, 90, 100] },
    { hours: 48, percent: [9, 12, 18, 25, 35, 49, 88, 100, 100, 100] },
    { hours: 72, percent: [14, 19, 28, 39, 55, 74, 100, 100, 100, 100] },
    { hours: 96, percent: [19, 26, 38, 53, 75, 98, 100, 100, 100, 100] },
    { hours: 120, percent: [24, 33, 48, 67, 95, 100, 100, 100, 100, 100] },
  ],
} as const;

/** Table 4: per cent added to the days when salt is under 3.33 lb to the hundredweight. */
export const TRICHINA_4: readonly (readonly [saltPercent: number, percent: number])[] = [
  [3.3, 1],
  [3.2, 4],
  [3.1, 7],
  [3, 10],
  [2.9, 13],
  [2.8, 16],
  [2.7, 19],
  [2.6, 22],
  [2.5, 25],
  [2.4, 28],
  [2.3, 31],
  [2.2, 34],
  [2.1, 37],
  [2, 40],
];
/** From here on table 4 adds nothing. */
const FULL_SALT_PERCENT = 3.33;
const NOISE = 1e-9;

/** Least salt, lb to 100 lb, of the ways of the same section. Against Trichinella, not for taste. */
export const TRICHINA_SALT = [
  { id: 'dry-sausage-methods-1-2-3-5', saltPercent: 3.33 },
  { id: 'dry-sausage-method-4', saltPercent: 2.5 },
  { id: 'dry-sausage-method-7', saltPercent: 2.7 },
  { id: 'capocollo-and-coppa', saltPercent: 4.5 },
  { id: 'ham-method-1', saltPercent: 4 },
  { id: 'ham-bag-cure', saltPercent: 6 },
] as const;

/** Least days of table 3A. Between two diameters the thicker one counts; over 6 in the table says nothing. */
export function trichinaDays(casingIn: number): number | null {
  if (!(casingIn > 0)) return null;
  return TRICHINA_3A.find(([diameter]) => casingIn <= diameter * (1 + NOISE))?.[1] ?? null;
}

/** Per cent off for a hold, of table 3B. Between rows or columns the lesser counts; below them nothing comes off. */
export function trichinaHoldPercent(hours: number, tempF: number): number {
  const row = TRICHINA_3B.rows.findLast((one) => hours >= one.hours * (1 - NOISE));
  const column = TRICHINA_3B.tempsF.findLastIndex((temp) => tempF >= temp - NOISE);
  return row?.percent[column] ?? 0;
}

/** Salt of the mix as the section counts it: dry ingredients leave the base, liquids stay. */
export interface TrichinaSalt {
  readonly percent: number;
  /** Cut to one decimal, never rounded up. */
  readonly cutPercent: number;
}

/**
 * Salt × 100 ÷ (total − dry ingredients).
 *
 * @param total the whole mix
 * @param dryIngredients salt, spice, sugar and all else that goes in dry
 * @returns null for unusable numbers
 * @example trichinaSalt(127.872, 6.372, 3.56) // 2.93, cut to 2.9
 */
export function trichinaSalt(total: number, dryIngredients: number, salt: number): TrichinaSalt | null {
  if (![total, dryIngredients, salt].every((value) => Number.isFinite(value) && value >= 0)) return null;
  if (dryIngredients < salt || total <= dryIngredients) return null;
  const percent = (salt * 100) / (total - dryIngredients);
  return { percent, cutPercent: Math.floor(percent * 10 * (1 + NOISE)) / 10 };
}

/**
 * Per cent added for too little salt, of table 4.
 *
 * @returns 0 from 3.33 up; null under 2.0, where the table ends
 * @example trichinaSaltPercent({ percent: 2.93, cutPercent: 2.9 }) // 13
 */
export function trichinaSaltPercent(salt: TrichinaSalt): number | null {
  if (salt.percent >= FULL_SALT_PERCENT * (1 - NOISE)) return 0;
  return TRICHINA_4.find(([percent]) => Math.abs(percent - salt.cutPercent) < 1e-6)?.[1] ?? null;
}

/** Least days in the drying room by method 6, and how they come about. */
export interface TrichinaDrying {
  readonly tableDays: number;
  readonly offDays: number;
  readonly addedDays: number;
  readonly days: number;
}

/**
 * Days of drying by method 6. What comes off is cut down to whole days, what is added is counted up.
 * Both are taken of the days of table 3A, which gives the longer time where it is open to reading.
 *
 * @param salt null: the mix holds 3.33 lb to the hundredweight or more
 * @returns null where a table says nothing
 * @example trichinaDrying({ casingIn: 3, hold: { hours: 48, tempF: 80 }, salt: null }) // 17 days
 */
export function trichinaDrying(question: {
  readonly casingIn: number;
  readonly hold: { readonly hours: number; readonly tempF: number } | null;
  readonly salt: TrichinaSalt | null;
}): TrichinaDrying | null {
  const { casingIn, hold, salt } = question;
  const tableDays = trichinaDays(casingIn);
  const more = salt === null ? 0 : trichinaSaltPercent(salt);
  if (tableDays === null || more === null) return null;
  const off = hold === null ? 0 : trichinaHoldPercent(hold.hours, hold.tempF);
  const offDays = Math.floor((tableDays * off) / 100);
  const addedDays = Math.ceil((tableDays * more) / 100);
  return { tableDays, offDays, addedDays, days: tableDays - offDays + addedDays };
}

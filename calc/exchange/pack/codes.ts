/*
 * A packed value is JSON again, and shorter. Texts, numbers, true, false and null stand for themselves. Everything else
 * is an array that begins with a code:
 *
 *   [0, …values]                            a list
 *   [1, n, shape, …columns]                 n objects of one shape, column by column
 *   [2, shape | -1, values, keys, …more]    an object with keys missing ([9]) or keys beyond its shape
 *   [10 + shape, …values]                   an object of exactly that shape
 *
 * A column of n values is a list, the rows of one shape again, or
 *
 *   "a|b|c"                                 texts
 *   [3, value]                              n times the same
 *   [4]                                     the same as the column before
 *   [5, first, "10 10 30s"]                 moments of one zone: the first, then steps in minutes or seconds
 */
export const LIST = 0;
export const ROWS = 1;
export const LOOSE = 2;
export const SAME = 3;
export const BEFORE = 4;
export const MOMENTS = 5;
export const ABSENT = 9;
export const SHAPED = 10;
/** Parts the texts of a column. */
export const BAR = '|';

export type Packed = null | boolean | number | string | readonly Packed[];
export type Plain = null | boolean | number | string | readonly Plain[] | { readonly [key: string]: Plain };

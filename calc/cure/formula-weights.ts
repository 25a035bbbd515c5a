/**
 * Formula weights, g/mol, summed from standard atomic weights rounded to four decimals
 * (Na 22.9898, K 39.0983, N 14.0067, O 15.9994). Derived.
 */
export const FORMULA_WEIGHT = {
  sodiumNitrite: 68.9953,
  potassiumNitrite: 85.1038,
  nitriteIon: 46.0055,
  sodiumNitrate: 84.9947,
  potassiumNitrate: 101.1032,
  nitrateIon: 62.0049,
} as const;

/**
 * Standard gravity, m/s²: the conventional value of the 3rd General Conference on Weights and
 * Measures, 1901 (source `cgpm-1901`). Local gravity differs by at most 0.3 %.
 */
export const STANDARD_GRAVITY_M_PER_S2 = 9.80665;

import { STANDARD_GRAVITY_M_PER_S2 } from './gravity.ts';

// 1 kPa on 1 mm² is 0.001 N, so kg × m/s² ÷ mm² × 1000 is kPa.
const KPA_MM2_PER_NEWTON = 1000;

/**
 * Pressure of a mass lying on a board, kPa: weight ÷ area of the board.
 *
 * @param loadKg mass on the board, kg, 0 or more
 * @param boardAreaMm2 area of the board that bears on the product, mm², above 0
 * @returns kPa, or null when either is unusable
 * @example pressPressureKPa(2, 290 * 95) // 0.712
 */
export function pressPressureKPa(loadKg: number, boardAreaMm2: number): number | null {
  if (!Number.isFinite(loadKg) || !Number.isFinite(boardAreaMm2) || loadKg < 0 || boardAreaMm2 <= 0)
    return null;
  return (loadKg * STANDARD_GRAVITY_M_PER_S2 * KPA_MM2_PER_NEWTON) / boardAreaMm2;
}

/**
 * Mass to lay on a board for a pressure, kg.
 *
 * @param pressureKPa wanted pressure, kPa, 0 or more
 * @param boardAreaMm2 area of the board, mm², above 0
 * @returns kg, or null when either is unusable
 * @example pressLoadKg(0.7, 290 * 95) // 1.97
 */
export function pressLoadKg(pressureKPa: number, boardAreaMm2: number): number | null {
  if (
    !Number.isFinite(pressureKPa) ||
    !Number.isFinite(boardAreaMm2) ||
    pressureKPa < 0 ||
    boardAreaMm2 <= 0
  ) {
    return null;
  }
  return (pressureKPa * boardAreaMm2) / (STANDARD_GRAVITY_M_PER_S2 * KPA_MM2_PER_NEWTON);
}

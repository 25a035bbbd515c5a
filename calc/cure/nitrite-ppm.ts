const MG_PER_KG = 1e6;

/**
 * Ingoing nitrite of a mixed forcemeat, mg/kg (ppm by mass), in the form the nitrite was given in:
 * nitrite × 1 000 000 ÷ weight basis. The basis is the meat block under some laws and everything in
 * the bowl under others; the two may differ by half.
 *
 * Source: FSIS Directive 7620.3, Processing Inspectors' Calculations Handbook (rev. 1995), comminuted products.
 *
 * @param nitriteG nitrite put in, g; the strength of the pack as a fraction times the curing salt
 * @param basisMassG weight it is counted on, g
 * @returns mg/kg, or null when either is not a usable number or the basis is nothing
 * @example nitritePpm(5.4 * 0.0625, 2800) // 120.5 on the meat block
 */
export function nitritePpm(nitriteG: number, basisMassG: number): number | null {
  if (!Number.isFinite(nitriteG) || !Number.isFinite(basisMassG)) return null;
  if (nitriteG < 0 || basisMassG <= 0) return null;
  // Multiplied before divided: 0.15625 g on 1 kg must come out as 156.25 and not a hair above it.
  const ppm = (nitriteG * MG_PER_KG) / basisMassG;
  return Number.isFinite(ppm) ? ppm : null;
}

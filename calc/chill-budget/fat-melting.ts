/**
 * Melting heat of pork fat between 10 and 40 °C, J/kg of pure fat. Derived from two published figures:
 * warming lard from 0 to 21 °C takes 4.80 falling to 3.34 kJ/(kg·K) (`james-meat-refrigeration-2002`, table 13.6), on
 * average 4.07; without melting it would take 2.0 (Choi and Okos). So 2.07 kJ/(kg·K) of it is melting: 43 kJ/kg over
 * those 21 °C. Back fat melts from 17.2 % at 10 °C to 73.7 % at 40 °C (`toldra-handbook-2010`).
 */
export const FAT_MELTING_JKGK = 2070;
/** Range over which that extra heat was read, °C. Below it the fat is taken as solid, above it nothing is added. */
const READ_FROM_C = 0;
const READ_TO_C = 21;

/**
 * Heat that melting fat has taken up on the way from 0 °C, J/kg of pure fat. Nothing below 0 °C and nothing more above
 * 21 °C, where the figures end and no mix should be.
 * @example fatMeltingJkg(10) // 20 700
 */
export function fatMeltingJkg(tempC: number): number {
  return FAT_MELTING_JKGK * (Math.min(READ_TO_C, Math.max(READ_FROM_C, tempC)) - READ_FROM_C);
}

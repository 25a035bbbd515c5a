/**
 * Heat that pork fat takes up in melting, J/(kg·K) of pure fat. derived: lard warmed from 0 to 21 °C takes 4.80 falling
 * to 3.34 kJ/(kg·K) (`james-meat-refrigeration-2002`, table 13.6), on average 4.07, of which 2.0 without melting. Back
 * fat melts from 17.2 % at 10 °C to 73.7 % at 40 °C (`toldra-handbook-2010`), 1.9 % for each degree; so the same rate is
 * taken on from there, though no heat above 21 °C was found measured. It fades out over 30–50 °C: no corner at 40 °C,
 * which would cost short steps, and as much in all as if it ended there.
 */
const MELTING_JKGK = 2070;
const FROM_C = 0;
const FADES_FROM_C = 30;
const TO_C = 50;

/**
 * Heat that melting has taken up at a temperature, J/kg of pure fat. The same is given back in cooling, though
 * real fat sets later and at a lower temperature than it melts.
 */
export function fatMeltingHeatJkg(tempC: number): number {
  const within = Math.min(TO_C, Math.max(FROM_C, tempC));
  const faded = Math.max(0, within - FADES_FROM_C) ** 2 / (2 * (TO_C - FADES_FROM_C));
  return MELTING_JKGK * (within - FROM_C - faded);
}

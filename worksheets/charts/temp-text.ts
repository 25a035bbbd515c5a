/** A core temperature with the digits it was read to: one decimal, or two where the second says something. */
export function tempText(tempC: number): string {
  return tempC.toFixed(2).replace(/0$/, '').replace('-', '−');
}

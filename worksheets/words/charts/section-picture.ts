export const cutAcrossTheMiddle = 'Cut across the middle';
export const uprightCutThroughTheMiddle = 'Upright cut through the middle';
export const coldestCHottestCLinesEvery = (
  cut: string,
  when: string,
  low: number,
  high: number,
  cross: string,
  every: number,
) => `${cut} ${when}: coldest ${low} °C, hottest ${high} °C. ${cross}Lines every ${every} °C.`;
export const crossColdestSpot = (mm: number) => `Cross: coldest spot of the middle line, ${mm} mm up. `;

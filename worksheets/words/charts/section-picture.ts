export const cutAcrossTheMiddle = 'Cut across the middle';
export const uprightCutThroughTheMiddle = 'Upright cut through the middle';
export const coldestCHottestCLinesEvery = (
  cut: string,
  when: string,
  low: number,
  high: number,
  every: number,
) => `${cut} ${when}: coldest ${low} °C, hottest ${high} °C. Lines every ${every} °C.`;

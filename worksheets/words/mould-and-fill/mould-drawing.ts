export const notKnown = 'not known';
export const fillLevelNotKnown = 'fill level not known';
export const filledToMm = (fillDepthMm: string) => `filled to ${fillDepthMm} mm`;
export const liningMm = (liningMm: number) => `, lining ${liningMm} mm`;
export const mouldFromAboveAndCutAcross = (said: string, fill: string, lining: string) =>
  `Mould from above and cut across: ${said}; ${fill}${lining}.`;
export const above = 'above';
export const cutAcross = 'cut across';
export const cutAcrossFilledTo = (fillDepthMm: string) => `cut across, filled to ${fillDepthMm}`;
export const asFarAsTheyAreKnown = ' as far as they are known';
export const insideMeasuresInMmDrawnTo = (value: string) => `Inside measures in mm, drawn to scale${value}.`;

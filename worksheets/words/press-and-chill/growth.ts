export const noProbeYet = 'No probe yet.';
export const listeriaMonocytogenesCooling = 'Listeria monocytogenes in the cooling';
export const overTheWholeCooling = 'over the whole cooling';
export const soFarTheCoreIsStill = 'SO FAR: the core is still warm';
export const measuredIn = 'Measured in';
export const withoutLag = 'Without lag';
export const withLag = 'With lag';
export const cooling2 = (number: number) => `Cooling ${number}`;
export const cannotTell2 = (growthDoubtWords: string) => `Cannot tell: ${growthDoubtWords}`;
export const cannotTellPublishedRates012 =
  'Cannot tell: its published rates are for 0 to 12 °C and 2 to 25 °C, and the core passes above both';
export const clostridiumPerfringensSpores2 = (value: string) =>
  `Clostridium perfringens from spores, ${value}, in tenfolds. The United States standard is no more than one.`;
export const atMost2 = (asRead: string, most: string) => `${asRead}, at most ${most}`;

export const noWaterHoldsThatMuchSalt = 'No water holds that much salt.';
export const freezesAt = 'Freezes at';
export const scaleAt60F156 = 'Scale, at 60 °F (15.6 °C)';
export const reads = 'Reads';
export const degreesSalometer100Salt26395 =
  'Degrees salometer: 100 × salt ÷ 26.395 %, saturated brine at 60 °F (The salometer and how to use it). Degrees Baumé: 145 − 145 ÷ specific gravity. Specific gravity between the rows of the brine table. Freezing point between the points of the CRC Handbook. Sugar makes a hydrometer read higher.';
export const where100Is = (saltFraction: string, saltAt100Fraction: string) =>
  `${saltFraction} where 100 is ${saltAt100Fraction} %`;
export const salometersDifferWhatCall100 = (salometerScales: string) =>
  `Salometers differ in what they call 100 degrees. This brine reads ${salometerScales}.`;

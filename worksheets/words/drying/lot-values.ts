export const ofH = (total: string, limit: string, unit: string) => `${total} of ${limit} °${unit} h`;
export const days = (days: number) => `${days} days`;
export const waterActivityAboutToAnEstimate = (low: string, high: string) =>
  `; water activity about ${low} to ${high}, an estimate`;
export const saltOnTheWater = (name: string, waterPhaseFraction: unknown, range: string) =>
  `${name}: ${waterPhaseFraction} salt on the water${range}.`;
export const now = 'Now';
export const atTheLossWanted = 'At the loss wanted';
export const moistureToProteinMeasured = (measuredRatio: string) =>
  `Moisture to protein, measured: ${measuredRatio}.`;
export const moistureToProteinEstimated = (estimatedRatio: string) =>
  `Moisture to protein, estimated: ${estimatedRatio}.`;
export const yes = 'yes';
export const no = 'no';

export const cookLoss = 'Cook loss';
export const yieldCookedAndChilledOfFilled = 'Yield: cooked and chilled, of filled';
export const timeToTheLimitTakenPlanned = 'Time to the limit: taken ÷ planned';
export const times = 'times';
export const timeToTheLimitTaken = 'Time to the limit, taken';
export const n10C50FTo54 = '10 °C (50 °F) to 54.4 °C (130 °F)';
export const saltFromAllSources = 'Salt from all sources';
export const deviationsWrittenDown = 'Deviations written down';

export const forecast = 'Forecast';
export const asPlanned = 'As planned';
export const nineTenKitchensReadingsAllow = 'nine in ten of the kitchens the readings allow, coldest spot';
export const pullForecast = 'pull, forecast';

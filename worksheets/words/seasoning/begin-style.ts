export const to = (name: string, use: string, min: number, max: number, unit: string) =>
  `${name}: ${use}, ${min} to ${max} ${unit}`;
export const beginFromAStyle = 'Begin from a style';
export const noneIAddMyOwnSpices = 'None: I add my own spices';
export const inventedProportionsTeaching =
  'Invented proportions for teaching; doses are common practice, no source. A brine counts by the litre: type its own dose.';
export const putInTheseParts = 'Put in these parts';

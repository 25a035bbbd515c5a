export const derived = 'Derived: volume of a cylinder.';
export const casingToSoak = 'Casing to soak';
export const cannotTellSeeWhatStillNeeded = 'Cannot tell: see what is still needed below';
export const filled = (filledM: string) => ` Filled: ${filledM}.`;
export const spareCommonPracticeNoSource = (casing: string, filledM: string, derived: string) =>
  `${casing}${filledM} ${derived} The spare is common practice, no source.`;
export const oneMetreHolds = 'One metre holds';
export const cannotTellWidthDensityHowFull = 'Cannot tell: the width, the density or how full is missing';
export const mToAKilogram = (metresPerKg: string) => `${metresPerKg} m to a kilogram`;
export const timeToHeatAgainstOneOf = 'Time to heat, against one of 30 mm';
export const aboutTimes = (comeUpTimes30: string) => `about ${comeUpTimes30} times`;
export const cannotTellWidthOnceStuffed = 'Cannot tell: the width once stuffed is missing';
export const derivedConductionIntoLong = (comeUp: string) =>
  `${comeUp} Derived: conduction into a long cylinder. The probe decides, not this.`;
export const links = 'Links';
export const derived2 = (links: string) => `${links} Derived.`;
export const leftOver = (leftoverG: string) => `${leftoverG} left over`;
export const eachLink = 'Each link';
export const cannotTellLinkBatchCasing = 'Cannot tell: the link, the batch or the casing is missing';
export const lengthWeightLinkDividedWeight = (derived: string) =>
  `Length: weight of a link divided by the weight of a metre. ${derived}`;
export const linksAsWeighed = 'Links as weighed';
export const cannotTellWeighSome = 'Cannot tell: weigh some';
export const sumWeightsDividedNumberAgainst =
  'Sum of the weights divided by their number, against the link wanted. Derived.';

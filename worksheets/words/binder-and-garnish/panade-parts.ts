export const noPanadeLeanSearedWetMixes = 'No panade. Lean, seared or wet mixes are the ones that want one.';
export const panadePart = 'Panade part';
export const addAPart = 'Add a part';
export const panadeCookedAndCold = 'Panade, cooked and cold';
export const cannotTellPartLossMissing = 'Cannot tell: a part or the loss is missing';
export const derived = (cooked: string) => `${cooked} Derived.`;
export const panadeOfTheMeat = 'Panade of the meat';
export const cannotTellPanadeMeatNotKnown = 'Cannot tell: the panade or the meat is not known';
export const derived2 = (share: string) => `${share} Derived.`;
export const forTheShareWanted = 'For the share wanted';
export const rawCooked = (wantedRawG: string, wantedCookedG: string) =>
  `${wantedRawG} raw, ${wantedCookedG} cooked`;
export const derived3 = (wanted: string) => `${wanted} Derived.`;
export const putUsualPartsShareWanted = 'Put in the usual parts for the share wanted';

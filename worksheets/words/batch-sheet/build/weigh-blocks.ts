export const cannotTell = 'cannot tell';
export const asWeighed = 'As weighed';
export const asPlanned = 'As planned';
export const curingSalt = 'Curing salt';
export const mgKgMeatBlockTotalSodium = (basis: string, nitritePpmMeat: string, nitritePpmTotal: string) =>
  `${basis}, mg/kg: ${nitritePpmMeat} on meat block, ${nitritePpmTotal} on total as sodium nitrite; `;
export const andAsIon = (nitriteIonPpmMeat: string, nitriteIonPpmTotal: string) =>
  `${nitriteIonPpmMeat} and ${nitriteIonPpmTotal} as ion.`;
export const from = (sources: string) => `from ${sources}`;
export const withTheLiningAsSliced = (fraction: string) => `with the lining ${fraction} as sliced`;
export const sheetMm = (acrossMm: string, alongMm: string) => `sheet ${acrossMm} × ${alongMm} mm`;
export const aboutG = (fatLiningG: string) => `about ${fatLiningG} g`;
export const mould = 'Mould';

export const cannotTell = 'cannot tell';
export const asWeighed = 'As weighed';
export const asPlanned = 'As planned';
export const mgKgOnTheMeat = (value: string, nitritePpmMeat: string) =>
  `${value}, mg/kg: ${nitritePpmMeat} on the meat, `;
export const meatCureSodiumNitriteMeatCure = (nitritePpmTotal: string, nitriteIonPpmTotal: string) =>
  `${nitritePpmTotal} on meat and cure as sodium nitrite; ${nitriteIonPpmTotal} on meat and cure as ion.`;
export const uptakeNotControlledNoMgKg = 'Uptake is not controlled: no mg/kg can be stated.';
export const to = (low: number, high: number) => `${low} to ${high}`;
export const yes = 'yes';
export const no = 'no';

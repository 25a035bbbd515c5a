export const cannotTell = 'cannot tell';
export const theAcid = 'the acid';
export const theSodiumSalt = 'the sodium salt';
export const saltSalometer = (brineSaltFraction: unknown, salometer: string) =>
  `${brineSaltFraction} salt, ${salometer} ° salometer, `;
export const beSpecificGravity = (baume: string, strength: string) =>
  `${baume} °Bé, specific gravity ${strength}, `;
export const gToALitreOfBrine = (strength: string) => `${strength} g to a litre of brine, `;
export const gToAKgOfWater = (strength: string) => `${strength} g to a kg of water, `;
export const lbToAUsGallonOf = (strength: string) => `${strength} lb to a US gallon of brine, `;
export const lbToOneOfWaterAt = (strength: string) => `${strength} lb to one of water; at 60 °F (15.6 °C).`;
export const whenEvenSaltMeatWater = (
  saltOnMeatFraction: unknown,
  waterPhaseFraction: unknown,
  values: string,
) => `When even: ${saltOnMeatFraction} salt on the meat, ${waterPhaseFraction} on its water.${values}`;
export const to = (low: number, high: number) => `${low} to ${high}`;
export const waterActivityEstimatedTo = (low: string, high: string) =>
  ` Water activity, estimated: ${low} to ${high}.`;
export const nitriteByThePumpOfThe = (pumpedPpm: string) => `Nitrite by the pump: ${pumpedPpm} of the meat.`;
export const nitriteByPickUpAtEquilibrium = (pickUpPpm: string, equilibriumPpm: string) =>
  `Nitrite by pick-up: ${pickUpPpm}; at equilibrium: ${equilibriumPpm}; `;
export const ifAllOfItWentIn = (worstPpm: string) => `if all of it went in: ${worstPpm}. As sodium nitrite.`;
export const onEverythingInTheVat = (nitritePpmAll: string) => `On everything in the vat: ${nitritePpmAll}.`;
export const yes = 'yes';
export const no = 'no';

export const cannotTell = 'cannot tell';
export const cannotTellChooseWayBrine = 'CANNOT TELL: choose the way of the brine';
export const byTheWeightOffTheScale = 'By the weight off the scale.';
export const planCuringSaltNotWeighedYet = 'By the plan: the curing salt is not weighed yet.';
export const nitritePutInAsSodiumNitrite = 'Nitrite put in, as sodium nitrite';
export const counted = 'Counted';
export const comesTo = 'Comes to';
export const workedAs = 'Worked as';
export const notKnown = 'not known';
export const pickleAllBrineEverything = (pickleG: string, nitriteG: string) =>
  `Pickle is all of the brine, with everything in it: ${pickleG}. Nitrite in it: ${nitriteG}, grams of curing salt × its strength.`;
export const bothCountingsThoseFsis =
  'Both countings are those of FSIS Directive 7620.3 (rev. 1995), immersion, methods 1 and 2; a pump is counted as a pick-up is. The worst case is derived: all of it ends in the meat.';
export const notWeighed = 'not weighed';
export const byPickUpFederalMethod1 = 'By pick-up, federal method 1';
export const nitritePickUpPickle = (pickUpFraction: string) =>
  `nitrite × pick-up (${pickUpFraction}) ÷ pickle`;
export const atEquilibriumFederalMethod2 = 'At equilibrium, federal method 2';
export const nitriteMeatPickle = 'nitrite ÷ (meat + pickle)';
export const ifTheMeatTookUpAll = 'If the meat took up all of it';
export const nitriteMeat = 'nitrite ÷ meat';
export const byThePump = 'By the pump';
export const nitritePumpPickle = (pumpFraction: string) => `nitrite × pump (${pumpFraction}) ÷ pickle`;
export const onMeatAndWater = 'On meat and water';
export const nitriteMeatWater = 'nitrite ÷ (meat + water)';
export const onEverythingInTheVat = 'On everything in the vat';

export const cannotTellNotKnownEvery = 'Cannot tell: not known of every material';
export const derivedMassBalance = (makeup: string) => `${makeup} Derived: mass balance.`;
export const oneShareDividedOtherDerived = 'One share divided by the other. Derived.';
export const fat = 'Fat';
export const protein = 'Protein';
export const water = 'Water';
export const waterToProtein = 'Water to protein';
export const fatToProtein = 'Fat to protein';

export const addAnotherThermometer = 'Add another thermometer';
export const thermometer = 'Thermometer';
export const asItIsMarked = 'As it is marked.';
export const showsInIce = 'Shows in ice';
export const crushedIceWaterStirredWait = 'Crushed ice and water, stirred. Wait until it stands still.';
export const showsInBoilingWater = 'Shows in boiling water';
export const aRollingBoilTheTipOff = 'A rolling boil, the tip off the bottom.';
export const stepOfItsDisplay = 'Step of its display';
export const n01Or1AsIt = '0.1 or 1, as it counts.';
export const errorAfterTheCheck = 'Error after the check, ±';
export const makerPrintsBlankUnknownThenNo =
  'As its maker prints it. Blank is unknown, and then no verdict can be given.';
export const checkedOn = 'Checked on';
export const checkedBy = 'Checked by';
export const remove = (name: string) => `Remove ${name}`;

export const iceStillToAdd = 'Ice still to add';
export const noneItEndsColdEnough = 'None: it ends cold enough';
export const ofTheMix = (iceNeededFraction: string) => `, ${iceNeededFraction} of the mix`;
export const cannotTellInputMissingIce = 'Cannot tell: an input is missing, or ice cannot melt at that end';
export const roundedUpDerivedBalanceOfHeat = (ice: string) => `${ice} Rounded up. Derived: balance of heat.`;
export const addedWaterWriteIntoFormula = 'It is added water: write it into the formula.';
export const orBeginWithAllMeatAnd = 'Or begin with all meat and fat at';
export const orBelow = (preChillC: string) => `${preChillC} or below`;
export const cannotTellAnInputIsMissing = 'Cannot tell: an input is missing';
export const cannotTellNoStartAbove39 =
  'Cannot tell: no start above −39 °C (−38 °F) does it, or an input is missing';
export const roundedDownDerivedBalanceHeat = (preChill: string) =>
  `${preChill} Rounded down. Derived: balance of heat.`;

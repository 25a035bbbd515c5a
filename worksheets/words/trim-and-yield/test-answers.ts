export const anUnnamedPile = 'an unnamed pile';
export const aByProduct = 'a by-product';
export const whatAOfIsWorth = (priceBasis: string, pile: string) =>
  `what a ${priceBasis} of ${pile} is worth`;
export const thePriceAsBought = 'the price as bought';
export const theWeightAsBought = 'the weight as bought';
export const inTrial = (pile: string, trial: number) => `${pile} in trial ${trial}`;
export const yieldTheMeanOfTheTrials = 'Yield, the mean of the trials';
export const cannotTellNoTrialIsWeighed = 'Cannot tell: no trial is weighed out';
export const derivedTestItselfCommon = (usable: string, mean: string, sampleSd: string) =>
  `${usable} ${mean} ${sampleSd} Derived; the test itself is common practice, no source.`;
export const inNoPile = 'In no pile';
export const cannotTellAPileIsNot = 'Cannot tell: a pile is not weighed';
export const derivedMassBalance = (unaccounted: string) => `${unaccounted} Derived: mass balance.`;
export const costOfAUsableKilogram = 'Cost of a usable kilogram';
export const cannotTellPricePileWhatProduct =
  'Cannot tell: a price, a pile or what a by-product is worth is missing';
export const meanTrialsCommonPracticeNo = (cost: string) =>
  `${cost} The mean of the trials. Common practice, no source; derived.`;
export const costFactor = 'Cost factor';
export const multiplyNewMarketPriceLongTrim = (costFactor: string) =>
  `${costFactor} Multiply a new market price by it, as long as trim and by-products stay what they are. Derived.`;
export const toBuyAtTheMeanYield = 'To buy, at the mean yield';
export const cannotTellWriteTrimmedWeight = 'Cannot tell: write the trimmed weight wanted';
export const neverWeightPlusLossBuysToo = (purchase: string) =>
  `${purchase} Never the weight plus the loss, which buys too little. Derived: mass balance.`;
export const toBuyToBeSafe = 'To buy, to be safe';
export const lowestYieldTrialsTakenDerived = (purchase: string) =>
  `${purchase} The lowest yield of the trials is taken. Derived.`;
export const sharesOfThePurchase = 'Shares of the purchase';
export const pile = 'Pile';
export const mean = 'Mean';
export const lowest = 'Lowest';
export const highest = 'Highest';
export const pile2 = (index: number) => `Pile ${index}`;

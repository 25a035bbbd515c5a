export const fromMemory = '; from memory';
export const lostSoFar = 'Lost so far';
export const cannotTellWeighStartNow = 'Cannot tell: weigh it at the start and now';
export const n1WeightNowWeightWhenDrying = '1 − weight now ÷ weight when drying began. Derived.';
export const weightAtTheLossWanted = 'Weight at the loss wanted';
export const cannotTellWriteWeightStartLoss =
  'Cannot tell: write the weight at the start and the loss of your plan';
export const weightWhenDryingBegan1Loss = 'Weight when drying began × (1 − loss). Derived.';
export const itIsThere = 'It is there.';
export const stillToLose = (toLoseG: string) => `${toLoseG} still to lose.`;
export const estimatedFromSaltAndWaterAlone = 'Estimated from salt and water alone';
export const when = 'When';
export const saltOnTheWater = 'Salt on the water';
export const waterActivity = 'Water activity';
export const atTheLossSoFar = 'At the loss so far';
export const atTheLossWanted = 'At the loss wanted';
export const saltAtTheLossWanted = 'Salt at the loss wanted';
export const cannotTellSaltStartLossMissing = 'Cannot tell: salt at the start or the loss is missing';
export const salt1LossSaltStaysWater =
  'Salt ÷ (1 − loss): the salt stays, the water goes. Derived: mass balance.';
export const waterSaltSaltMoistureLossWater =
  'On the water: salt ÷ (salt + moisture − loss). Water activity by the forms of Pitzer and Mayorga (1973) and of Resnik and Chirife, both from memory. Sugar and acid lower the real one; a hard rim makes it uneven. Only an instrument decides.';
export const moistureToProteinEstimated = 'Moisture to protein, estimated';
export const cannotTellMoistureProteinLoss = 'Cannot tell: moisture, protein or the loss is missing';
export const moistureStartLossProteinStart =
  '(Moisture at the start − loss) ÷ protein at the start. Derived: mass balance.';
export const cannotTell = 'cannot tell';
export const beyondSaturatedSalt = 'beyond saturated salt';
export const to = (low: string, high: string) => `${low} to ${high}`;
export const shownComparisonNoneSaysProduct =
  'Shown for comparison. None of them says that a product is safe.';
export const what = 'What';
export const figure = 'Figure';
export const measured = 'Measured';
export const by = 'By';
export const notMeasured = 'not measured';
export const notBelow = 'not below';
export const from = (low: string) => `from ${low}`;
export const atMost = (high: string) => `at most ${high}`;
export const notMeasured2 = ', not measured';
export const measured2 = (measuredRatio: string) => `, measured ${measuredRatio}`;
export const moistureToProtein = (measuredRatio: string) => `Moisture to protein${measuredRatio}`;
export const name = 'Name';
export const atMost2 = 'At most';
export const hasIt = 'Has it';
export const lossThatWouldReachIt = 'Loss that would reach it';
export const leastDaysInTheDryingRoom = 'Least days in the drying room';
export const days = (days: number) => `${days} days`;
export const cannotTellCasingAllThree =
  'Cannot tell: casing and all three weights of the mix are needed, and must lie in the table';
export const daysCasingLessWhatWarmHold =
  'Days by the casing, less what a warm hold takes off, and what too little salt adds.';
export const casingDaysOffWarmHoldAdded = (tableDays: number, offDays: number, addedDays: number) =>
  `By the casing ${tableDays} days; ${offDays} off for the warm hold, ${addedDays} added for salt under 3.33 lb to 100 lb.`;
export const betweenTwoRowsLongerCounts9 = (tableDays: string) =>
  `${tableDays} Between two rows the longer counts. 9 CFR 318.10(c)(3)(i), method 6, tables 3A, 3B and 4, annual edition of 2015.`;
export const saltAsThatRuleCountsIt = 'Salt, as that rule counts it';
export const lbTo100Lb = (percent: string) => `${percent} lb to 100 lb`;
export const cannotTellWeighMixDry = 'Cannot tell: weigh the mix, its dry ingredients and the salt in them';
export const salt100AllMixDryIngredients =
  'Salt × 100 ÷ (all of the mix − dry ingredients), cut to one decimal for the table. 9 CFR 318.10(c)(3)(i), method 6.';
export const below = 'below';
export const yes = 'yes';
export const no = 'no';

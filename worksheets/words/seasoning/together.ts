export const totalMixItIsDosedOn = 'Total mix it is dosed on';
export const cannotTellTypeTotalMixWrite = 'Cannot tell: type the total mix, or write the formula';
export const formulaEverythingBowlWithout =
  'By the formula: everything in the bowl without this seasoning, divided by one less all its doses, so that a dose counts on the finished mix. Derived: mass balance.';
export const allSeasoning = 'All seasoning';
export const addedUpOverEveryBlendEvery = (massG: string) =>
  `${massG} Added up over every blend and every loose seasoning. Derived.`;
export const writeTheseGramsIntoTheFormula = 'Write these grams into the formula';
export const linesPageWroteBeforeReplaced =
  'Lines this page wrote before are replaced. Seasonings you wrote into the formula yourself stay: take them out if they are the same.';
export const theSeasoningStandsInTheFormula = 'The seasoning stands in the formula.';
export const totalMixTypedHandLeaveBlank =
  'The total mix was typed by hand. Leave it blank to write these grams into the formula of the batch.';
export const plainSaltLeaveOutDilutions = 'Plain salt to leave out, for the dilutions';
export const derivedOneTenCommonPracticeNo = (dilution: string) =>
  `${dilution} Derived; one in ten: common practice, no source.`;
export const saltThatSaltySeasoningsBring = 'Salt that salty seasonings bring';
export const to = (min: string, max: string) => `${min} to ${max}`;
export const gramsEachSaltPackUsualBand =
  'Grams of each × its salt, by the pack or the usual band: common practice, no source.';
export const eachSpiceAllSourcesTogether =
  'Each spice, all its sources together, against its ceiling of taste';
export const spice = 'Spice';
export const onTheTotalMix = 'On the total mix';
export const ofItsCeiling = 'Of its ceiling';
export const notKnown = 'not known';
export const noCeilingKnown = 'no ceiling known';
export const atLeast = (ceilingShare: string) => `at least ${ceilingShare}`;
export const ceilingsCommonPracticeNoSource = (ceilingShare: string) =>
  `${ceilingShare} Ceilings: common practice, no source; never a limit of law.`;

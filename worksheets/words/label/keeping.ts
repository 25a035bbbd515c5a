export const pack = 'Pack';
export const notChosen = 'Not chosen';
export const hurdleAgainstBotulismProven = 'Hurdle against botulism, proven';
export const none = 'None';
export const keepAtOrBelow = 'Keep at or below';
export const lifeFromTheCook = 'Life from the cook';
export const setPlanFiveDaysShortPurpose =
  'Set by your plan. Five days is short on purpose: common practice, no source.';
export const theDayOfTheCook = 'The day of the cook';
export const countsAsDayOne = 'Counts as day one';
export const doesNotCount = 'Does not count';
export const kindOfDate = 'Kind of date';
export const useBy = 'Use by';
export const bestBefore = 'Best before';
export const cookedOn = 'Cooked on';
export const blankDayFirstCookLog = 'Blank: the day of the first cook in the log.';
export const packedOn = 'Packed on';
export const itMovesNoDate = 'It moves no date.';
export const netWeightOfAPack = 'Net weight of a pack';
export const withoutWrappingCrustJellyWhere =
  'Without the wrapping; with crust and jelly, where they are eaten.';
export const portionSlicingWorksheetWeigh = (portionG: string) =>
  `A portion by the slicing worksheet: ${portionG}. Weigh the pack all the same.`;
export const cannotTellDayCookLifeMissing = 'Cannot tell: the day of the cook or the life is missing';
export const writeItOnTheBatchSheet = 'Write it on the batch sheet';
export const storageLine = 'Storage line';
export const cannotTellTemperatureMissing = 'Cannot tell: the temperature is missing';
export const netWeightAsPrinted = 'Net weight, as printed';
export const cannotTellWeighPackWithout = 'Cannot tell: weigh a pack without its wrapping';

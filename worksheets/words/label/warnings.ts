export const sentencesOurOwnWhereAuthority =
  'Sentences of our own. Where your authority has its wording, print that.';
export const unitedStatesRawMeatCarriesSafe =
  ' In the United States raw meat carries the safe handling panel: 9 CFR 317.2(l).';
export const priceOfASlice = 'Price of a slice';
export const cannotTellPlanSlicingNot = 'Cannot tell: plan or slicing is not finished';
export const priceOfAKilogram = 'Price of a kilogram';
export const priceOfAPound = 'Price of a pound';

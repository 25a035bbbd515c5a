export const family = 'Family';
export const notChosen = 'Not chosen';
export const bringsUsualRangesTradeNotes =
  'Brings the usual ranges of the trade as notes, and usual shares to begin an empty formula with.';

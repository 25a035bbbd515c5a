export const money = 'money';
export const portionsToServe = 'portions to serve';
export const finishedWeightToHave = 'finished weight to have';
export const mouldsToFill = 'moulds to fill';
export const startFrom = 'Start from';
export const allMouldsMouldWorksheetFilled = 'All moulds of the mould worksheet, filled.';
export const portions = 'Portions';
export const finishedWeight = 'Finished weight';
export const weightOfAPortion = 'Weight of a portion';
export const lostCookingChillingFill = 'Lost in cooking and chilling, of the fill';
export const weighMouldBeforeAfterOwnFigure =
  'Weigh a mould before and after: your own figure beats every range.';
export const endsCrumbsFinishedWeight = 'Ends and crumbs, of the finished weight';
export const leftOnBowlAndFillerOf = 'Left on bowl and filler, of the mix';
export const forTheTestPoach = 'For the test poach';
export const currency = 'Currency';
export const whatMoneyCalledHereLabelOnly = 'What your money is called here. A label only.';
export const smallThingsTogetherABatch = 'Small things together, a batch';
export const everyLineMarkedOneSaltSpices = 'For every line marked as one of them: salt, spices, film.';
export const handsOnTime = 'Hands-on time';
export const labourAnHour = 'Labour, an hour';
export const energyPackagingRestBatch = 'Energy, packaging and the rest, a batch';
export const type0NoneBlankUnknownLeaves =
  'Type 0 for none. Blank is unknown, and leaves the full cost open.';
export const priceBy = 'Price by';
export const looksFoodLabourOverhead = 'Looks at food, labour and overhead together.';
export const looksFoodAloneLabourOverhead =
  'Looks at food alone; labour and overhead must come out of what is left.';
export const taxOnThePrice = 'Tax on the price';
export const type0ForNone = 'Type 0 for none.';
export const theChillerMayTakeAtOnce = 'The chiller may take at once';
export const makerWarmFoodOneLoadShelf =
  'By its maker, warm food in one load. A shelf that holds it is not a chiller that cools it.';
export const mouldsTheBathOrOvenTakes = 'Moulds the bath or oven takes at once';

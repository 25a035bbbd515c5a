export const whatIsSetAndHowFirm = 'What is set, and how firm';
export const gelatineAtHand = 'Gelatine at hand';
export const whatChangesTheSet = 'What changes the set';
export const toWeigh = 'To weigh';
export const underACrustOrRoundA = 'Under a crust, or round a pâté';
export const cardPotWhatWeighBothRules =
  'A card for the pot: what to weigh by both rules, the plate test, the pouring.';

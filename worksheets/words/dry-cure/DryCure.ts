export const ruleProductAndScale = 'Rule, product and scale';
export const theCure = 'The cure';
export const curingSalt = 'Curing salt';
export const piecesEachInABagOf = 'Pieces, each in a bag of its own';
export const noPieceOnTheBenchYet = 'No piece on the bench yet';
export const againstTheRule = 'Against the rule';
export const cannotTellNothingOnTheBench = 'CANNOT TELL: nothing on the bench yet';
export const cardHangEachBagWeightsDays =
  'A card to hang on each bag: its weights, the days to turn it, its loss.';

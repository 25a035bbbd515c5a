export const trimTests = 'Trim tests';
export const weighPieceBoughtTrimAlwaysDo =
  'Weigh the piece as bought, trim it as you always do, weigh every pile. Three pieces on three days say more than one.';
export const oneCutThreeTrials = 'One cut, three trials';
export const pile = 'Pile';
export const trial1G = 'Trial 1, g';
export const trial2G = 'Trial 2, g';
export const trial3G = 'Trial 3, g';
export const share = 'Share, %';
export const worthAKg = 'Worth a kg';
export const beginATest = 'Begin a test';
export const butchersTestCardEachCutRoom = 'A butcher’s test card for each cut, with room to sign.';

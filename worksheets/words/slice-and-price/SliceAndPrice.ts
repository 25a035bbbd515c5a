export const howItIsCut = 'How it is cut';
export const slicesPortionsNotYetComputed = 'Slices and portions: not yet computed';
export const whatToAskForIt = 'What to ask for it';
export const pricesNotYetComputed = 'Prices: not yet computed';
export const howCutWhatCostsOneCard = 'How to cut it and what it costs, on one card for slicer and till.';

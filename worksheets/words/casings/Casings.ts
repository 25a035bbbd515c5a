export const theCasingAndWhatGoesIn = 'The casing and what goes in';
export const toSoak = 'To soak';
export const links = 'Links';
export const tenOnTheScale = 'Ten on the scale';
export const cardFillerSoakListLinkWanted =
  'A card for the filler: the soak list, the link wanted, and a tally of ten.';

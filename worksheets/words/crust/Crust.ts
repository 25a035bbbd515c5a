export const theMould = 'The mould';
export const pastry = 'Pastry';
export const toCut = 'To cut';
export const thePaste = 'The paste';
export const slicesOrCaulInside = 'Slices or caul inside';
export const cardPastryBenchSheetsPaste =
  'A card for the pastry bench: sheets, paste, chimneys, lining, and a place to draw.';

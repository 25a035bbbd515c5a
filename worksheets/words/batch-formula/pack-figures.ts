export const salt = 'Salt';
export const fat = 'Fat';
export const protein = 'Protein';
export const water = 'Water';
export const packFiguresWritten = 'Pack figures, written';
export const packFigures = 'Pack figures';
export const inIt = (label: string) => `${label} in it`;
export const nitriteItBringsAsSodiumNitrite = 'Nitrite it brings, as sodium nitrite';
export const curedMeatMixMakerType0 =
  'For cured meat in the mix, by its maker. Type 0 when it brings none. Blank is unknown.';
export const whatItIsCalledHere = 'What it is called here';
export const nameOwnFiguresStayIngredient = 'A name of your own; the figures stay with the ingredient.';

export const slicesOfAThickness = 'slices of a thickness';
export const portionsOfAWeight = 'portions of a weight';
export const aPortion = 'A portion';
export const aSlice = 'A slice';
export const aKilogram = 'A kilogram';
export const aPound = 'A pound';

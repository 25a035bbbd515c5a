export const heightAboveSeaLevel = 'Height above sea level';

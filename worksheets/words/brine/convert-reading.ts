export const noSaltBrineReadsScale = 'No salt brine reads that on this scale.';

export const egg = 'Egg';
export const cream = 'Cream';

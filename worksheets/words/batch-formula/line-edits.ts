export const curingSalt = 'Curing salt';

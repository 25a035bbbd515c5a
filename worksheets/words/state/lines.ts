export const curingSalt = 'Curing salt';
export const salt = 'Salt';

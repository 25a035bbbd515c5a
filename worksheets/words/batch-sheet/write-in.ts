export const workedOut = 'worked out';
export const entered = 'entered';
export const byDefault = 'default';

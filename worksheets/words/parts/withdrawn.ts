export const stop = 'STOP';

export const stop = 'STOP';
export const why = 'Why';

export const stop = 'STOP';
export const caution = 'Caution';
export const note = 'Note';
export const why = 'Why';

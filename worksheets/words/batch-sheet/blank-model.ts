export const grind1 = 'Grind 1';
export const grind2 = 'Grind 2';
export const endMix = 'End mix';
export const fill = 'Fill';

export const notSaid = 'not said';
export const blank = 'blank';

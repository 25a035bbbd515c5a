export const notYetComputed = 'Not yet computed';

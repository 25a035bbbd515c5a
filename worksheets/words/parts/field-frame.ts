export const defaultWord = 'default';

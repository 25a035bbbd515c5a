export const part = 'Part';

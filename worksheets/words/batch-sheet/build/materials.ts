export const notNamed = 'Not named';

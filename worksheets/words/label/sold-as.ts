export const beforeTax = ' before tax';

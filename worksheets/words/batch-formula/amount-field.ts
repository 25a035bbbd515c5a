export const meat = '% meat';
export const all = '% all';
export const amount = 'Amount';
export const amountCountedIn = 'Amount counted in';

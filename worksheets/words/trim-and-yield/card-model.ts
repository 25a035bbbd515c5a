export const to = (text: string, text2: string) => `${text} to ${text2}`;
export const usable = 'usable';
export const byProduct = 'by-product';
export const waste = 'waste';

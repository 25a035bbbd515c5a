export const asWeighed = 'As weighed';
export const link = (index: number) => `Link ${index}`;

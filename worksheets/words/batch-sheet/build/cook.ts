export const forWord2 = (text: string, printed: string) => `${text} for ${printed}`;

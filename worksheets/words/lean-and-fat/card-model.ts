export const any = 'any';
export const to = (text: string, text2: string) => `${text} to ${text2}`;
export const unnamedMaterial = 'Unnamed material';

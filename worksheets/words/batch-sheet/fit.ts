export const seasoningLines = (length: number) => `Seasoning, ${length} lines`;
export const not = ':not(*)';

export const notInThisList = (value: string) => `${value} (not in this list)`;

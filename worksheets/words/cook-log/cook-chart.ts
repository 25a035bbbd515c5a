export const inWord = 'in';
export const out = 'out';
export const limit2 = (text: string) => `limit ${text}`;
export const actAt2 = (actionC: string) => `act at ${actionC}`;
export const held2 = (countedS: string) => `held ${countedS}`;

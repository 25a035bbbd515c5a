export const cFor = '____ °C for ____';
export const toCInH = '____ to ____ °C in ____ h';
export const cDays = '≤ ____ °C, ____ days';
export const daysAtC = '____ days at ≤ ____ °C';

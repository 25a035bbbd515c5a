export const rightWithin005C = 'right, within 0.05 °C';

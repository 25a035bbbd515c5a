export const at = 'At';
export const conductsWMK = 'Conducts, W/(m·K)';
export const takesForOneDegreeKjKg = 'Takes for one degree, kJ/(kg·K)';

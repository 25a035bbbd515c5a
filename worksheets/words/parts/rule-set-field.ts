/** Behind the hint of a rule set that only this device's settings chose. */
export const fromTheSettings = ' From this device’s settings, not confirmed for this batch. ';
export const itAppliesHere = 'It applies here';

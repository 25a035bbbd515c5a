export const readingsByHand = 'Readings, by hand';
export const time = 'Time';
export const coreC = 'Core °C';
export const initials = 'Initials';
export const remarks = 'Remarks';

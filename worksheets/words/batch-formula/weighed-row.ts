export const asPlanned = 'as planned';
export const more = 'more';
export const less = 'less';
export const line = (place: number) => `line ${place}`;
export const planned = 'Planned';
export const asWeighed = 'As weighed';
export const difference = 'Difference';
export const lot = 'Lot';

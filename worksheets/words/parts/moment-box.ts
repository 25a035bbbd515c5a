export const dayOf = (label: string) => `Day of ${label}`;
export const now = (label: string) => `${label}: now`;
export const now2 = 'Now';

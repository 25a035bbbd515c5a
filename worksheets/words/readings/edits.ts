export const probe = (index: number) => `Probe ${index}`;
export const probe2 = (index: number) => `Probe ${index}`;

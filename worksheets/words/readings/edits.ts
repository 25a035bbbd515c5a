export const probe2 = (index: number) => `Probe ${index}`;

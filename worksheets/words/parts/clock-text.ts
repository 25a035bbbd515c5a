export const days = (minutes: number) => `${minutes} days`;

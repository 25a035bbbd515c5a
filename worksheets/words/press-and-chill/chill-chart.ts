export const pressOn = 'press on';
export const chill = 'chill';
export const by2 = (celsius: string, deadlineMs: string) => `${celsius} by ${deadlineMs}`;

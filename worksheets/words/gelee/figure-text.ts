export const to = (low: string, high: string) => `${low} to ${high}`;
export const sheets = (min: string) => `${min} sheets`;

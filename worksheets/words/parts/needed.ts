export const stillNeededFor = (name: string, fields: string) => `Still needed for ${name}: ${fields}.`;

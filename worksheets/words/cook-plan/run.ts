export const refused = 'a measure or temperature is out of what can be reckoned';

export const fromPortionsToServe = 'From portions to serve';
export const fromTheFinishedWeight = 'From the finished weight';
export const fromTheMouldsToFill = 'From the moulds to fill';
export const smallThings = 'small things';
export const ofWord = (text: string) => ` of ${text}`;
export const pieces = (whole: number, text: string) => `${whole} pieces, ${text}`;
export const unnamedLine = 'Unnamed line';

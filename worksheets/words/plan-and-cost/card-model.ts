export const fromPortionsToServe = 'From portions to serve';
export const fromTheFinishedWeight = 'From the finished weight';
export const fromTheMouldsToFill = 'From the moulds to fill';
export const smallThings = 'small things';
export const pieces = (whole: number, text: string) => `${whole} pieces, ${text}`;
export const unnamedLine = 'Unnamed line';
export const pieceOf = (each: string) => `piece of ${each}`;
export const piece = 'piece';

export const cannotTell = (byProductDoubtWords: string) => `Cannot tell: ${byProductDoubtWords}`;

export const keepFrozen = 'Keep frozen';
export const keepRefrigerated = 'Keep refrigerated';
export const atOrBelow = (value: string, text: string) => `${value} at ${text} or below.`;
export const netWt = (ounces: string, grams: string) => `Net Wt ${ounces} (${grams})`;
export const gUsedFor100G = (figure: number) => `${figure} g used for 100 g`;
export const cannotTellAtMost = (figure: string) => `CANNOT TELL: at most ${figure}`;

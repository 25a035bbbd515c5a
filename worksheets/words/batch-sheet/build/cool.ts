export const endOfCook = 'End of cook';
export const inWord2 = (from: string, text: string, maxMin: string) => `${from} → ${text} in ${maxMin}`;
export const byLines2 = (elapsedMin: string) => `${elapsedMin} by lines`;
export const atWorst2 = (worstMin: string) => `${worstMin} at worst`;

export const noTableFiguresWriteThePacks = 'No table figures: write the pack’s.';
export const noSource = 'no source';
export const figures = (from: string) => `Figures: ${from}`;
export const figures2 = (name: string, from: string) => `Figures: ${name} (${from})`;

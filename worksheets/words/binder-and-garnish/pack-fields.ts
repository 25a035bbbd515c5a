export const saltInByThePack = (name: string) => `Salt in ${name}, by the pack`;
export const blankTheCompositionTable = 'Blank: the composition table.';
export const waterIn = (name: string) => `Water in ${name}`;

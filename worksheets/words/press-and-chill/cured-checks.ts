export const atLeast = (limit: string) => `at least ${limit}`;
export const atMost = (limit: string) => `at most ${limit}`;
export const nitritePutIn = 'Nitrite put in, on everything';
export const saltOnWaterPhase = 'Salt on water phase';
export const ascorbateOrErythorbate = 'Ascorbate or erythorbate, on everything';
export const waterActivity = 'Water activity';
export const liverOfEverything = 'Liver, of everything';

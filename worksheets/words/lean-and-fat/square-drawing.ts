export const squareFatPartsFirstSecond = (
  nameA: string,
  fatA: string,
  nameB: string,
  fatB: string,
  target: string,
  partsA: string,
  partsB: string,
) =>
  `The square: ${nameA} at ${fatA} fat and ${nameB} at ${fatB} to ${target}; ${partsA} parts of the first, ${partsB} of the second.`;
export const parts = (partsA: string) => `${partsA} parts`;
export const parts2 = (partsB: string) => `${partsB} parts`;
export const acrossEachDiagonalStands =
  'Across each diagonal stands the difference: so many parts of the material on that line.';

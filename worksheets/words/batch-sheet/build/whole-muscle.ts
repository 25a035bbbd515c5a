export const open = '______';
export const percent = (fraction: string) => `${fraction} %`;
export const brineSalt = (onMeat: string, onWater: string) =>
  `See the brine card. Salt in the meat at the end of the brine ${onMeat}, on its water ${onWater}. The formula holds the bare meat.`;
export const dryCureSalt = (onMeat: string) =>
  `See the dry cure card. Salt on the weight of the meat ${onMeat}. The formula holds the bare meat.`;
export const nitriteAtMost = (ppm: string) =>
  `Reckoned on the cure card, mg/kg as sodium nitrite: at most ${ppm} on the meat.`;
export const nitriteOpen = 'Reckoned on the cure card. Here nobody can tell the mg/kg.';
export const besideFormula = ' Curing salt in the formula is not counted in it.';
export const curingSalt = 'Curing salt';
export const pieceNamed = (salt: string, piece: string) => `${salt}, for ${piece}`;
export const pieces = (salt: string, count: number) => `${salt}, ${count} pieces, see the dry cure card`;

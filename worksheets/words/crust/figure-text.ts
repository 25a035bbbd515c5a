export const to = (least: number, most: number) => `${least} to ${most}`;
export const atMmFromOneEnd = (placesMm: string) => `at ${placesMm} mm from one end`;
export const toG = (minG: string, maxG: string) => `${minG} to ${maxG} g`;
